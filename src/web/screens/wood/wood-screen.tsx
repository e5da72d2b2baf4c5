import { useState } from 'preact/hooks';
import { useAnswer } from '../../engine/use-answer.ts';
import { design } from '../../state/current.ts';
import { Tabs } from '../../ui/tabs.tsx';
import { words } from '../../words/en.ts';
import { BookBlock } from '../book/book-block.tsx';
import { BoardFields } from './board-fields.tsx';
import { BoardsView } from './boards-view.tsx';
import { ClimateFields } from './climate-fields.tsx';
import { LeafFields } from './leaf-fields.tsx';
import { PatchView } from './patch-view.tsx';

const BOARDS = 'boards';
const MENDING = 'mending';

/** From rough boards to the wood of the base: what lies where, how boards are resawn, which leaf goes where, what moves. */
export function WoodScreen() {
  const chapters = useAnswer('woodChapters');
  const form = useAnswer('form');
  const [chosen, setChosen] = useState<string>(BOARDS);
  const inHand = design.value;
  const said = words.wood;
  if (inHand === undefined || chapters === undefined || form === undefined) {
    return <p class="waiting">{words.loading}</p>;
  }
  if (!form.isBase) return <p class="waiting">{said.partsAlone}</p>;
  const tabs = [
    { name: BOARDS, label: said.boards },
    { name: MENDING, label: said.mending.title },
    ...chapters.map(({ title }) => ({ name: title, label: title })),
  ];
  const chapter = chapters.find(({ title }) => title === chosen);
  return (
    <div class="with-panel wood-screen">
      <Tabs
        label={said.tabs}
        tabs={tabs}
        chosen={chapter === undefined && chosen !== MENDING ? BOARDS : chosen}
        onChoose={setChosen}
      >
        {chosen === MENDING ? (
          <PatchView design={inHand} />
        ) : chapter === undefined ? (
          <BoardsView design={inHand} />
        ) : (
          <div class="wood-chapter">
            {chapter.blocks.map((block, at) => (
              <BookBlock key={at} block={block} />
            ))}
          </div>
        )}
      </Tabs>
      <aside class="panel" aria-label={said.panel}>
        <BoardFields design={inHand} />
        <LeafFields design={inHand} />
        <ClimateFields design={inHand} />
      </aside>
    </div>
  );
}
