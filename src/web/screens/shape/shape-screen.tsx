import { lazy, Suspense } from 'preact/compat';
import { useEffect, useState } from 'preact/hooks';
import { useAnswer } from '../../engine/use-answer.ts';
import { currentId } from '../../state/current.ts';
import { Tabs } from '../../ui/tabs.tsx';
import { words } from '../../words/en.ts';
import { FigureList } from './figure-list.tsx';
import { NoDrawing } from './no-drawing.tsx';
import { PictureBoard } from './picture-board.tsx';
import { isOfPart, keyOfPicture, shownPicture } from './shown-picture.ts';

const SIDES = ['front', 'left', 'plan'] as const;
const SPACE = 'in space';
/** What draws in space is fetched when it is asked for. */
const SpaceView = lazy(async () => ({ default: (await import('../../space/space-view.tsx')).SpaceView }));

/** The base from the front, the side or above, or one part alone, with the figures of its form beside it. */
export function ShapeScreen() {
  const listed = useAnswer('parts');
  const form = useAnswer('form');
  const [inSpace, setInSpace] = useState(false);
  const sought = shownPicture.value;
  // A finding that leads to a view leads out of space.
  useEffect(() => setInSpace(false), [sought]);
  // What parts are made hangs on joints: the sides of a base need not wait for it.
  const parts = listed ?? (form?.isBase === true && !isOfPart(sought) ? [] : undefined);
  if (parts === undefined || form === undefined) {
    return (
      <div class="shape-screen">
        <div class="tabs">
          <NoDrawing />
        </div>
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
  const space = form.isBase ? [{ name: SPACE, label: words.space.tab }] : [];
  const isSpace = inSpace && form.isBase;
  return (
    <div class="shape-screen">
      <Tabs
        label={words.shape.views}
        tabs={[
          ...(form.isBase ? views.slice(0, SIDES.length) : []),
          ...space,
          ...views.slice(form.isBase ? SIDES.length : 0),
        ]}
        chosen={isSpace ? SPACE : shown.name}
        onChoose={(name) => {
          setInSpace(name === SPACE);
          if (name !== SPACE) shownPicture.value = views.find((view) => view.name === name)?.of;
        }}
      >
        {isSpace ? (
          <Suspense fallback={<p class="waiting">{words.loading}</p>}>
            <SpaceView />
          </Suspense>
        ) : (
          <PictureBoard key={`${currentId.value} ${shown.name}`} of={shown.of} />
        )}
      </Tabs>
      <FigureList />
    </div>
  );
}
