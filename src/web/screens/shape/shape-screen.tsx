import { useAnswer } from '../../engine/use-answer.ts';
import { currentId } from '../../state/current.ts';
import { Tabs } from '../../ui/tabs.tsx';
import { words } from '../../words/en.ts';
import { FigureList } from './figure-list.tsx';
import { PictureBoard } from './picture-board.tsx';
import { keyOfPicture, shownPicture } from './shown-picture.ts';

const SIDES = ['front', 'left', 'plan'] as const;

/** The base from the front, the side or above, or one part alone, with the figures of its form beside it. */
export function ShapeScreen() {
  const parts = useAnswer('parts');
  const form = useAnswer('form');
  if (parts === undefined || form === undefined) {
    return (
      <div class="shape-screen">
        <p class="waiting">{words.loading}</p>
        <FigureList />
      </div>
    );
  }
  const views = [
    ...(form.isBase ? SIDES.map((side) => ({ of: { side }, label: words.shape[side] })) : []),
    ...parts.map(({ name, label }) => ({ of: { part: name }, label })),
  ].map((view) => ({ ...view, name: keyOfPicture(view.of) }));
  const asked = shownPicture.value === undefined ? undefined : keyOfPicture(shownPicture.value);
  const shown = views.find(({ name }) => name === asked) ?? views[0];
  if (shown === undefined) return <FigureList />;
  return (
    <div class="shape-screen">
      <Tabs
        label={words.shape.views}
        tabs={views}
        chosen={shown.name}
        onChoose={(name) => {
          shownPicture.value = views.find((view) => view.name === name)?.of;
        }}
      >
        <PictureBoard key={`${currentId.value} ${shown.name}`} of={shown.of} />
      </Tabs>
      <FigureList />
    </div>
  );
}
