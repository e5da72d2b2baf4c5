import { useEffect, useRef, useState } from 'preact/hooks';
import type { ScreenScene } from '../../../drawing/index.ts';
import { SceneLines } from '../../drawing/scene-lines.tsx';
import { SceneView } from '../../drawing/scene-view.tsx';
import type { ScreenBlock } from '../../engine/answers/book.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

/** px on the screen per mm of the page. */
const PX_PER_MM = 4.2;

/** One block of the shop book. */
export function BookBlock({ block }: { readonly block: ScreenBlock }) {
  switch (block.kind) {
    case 'heading':
      return <h3>{block.text}</h3>;
    case 'text':
      return <p>{block.text}</p>;
    case 'list': {
      const items = block.items.map((item) => <li key={item}>{item}</li>);
      return block.numbered ? <ol>{items}</ol> : <ul>{items}</ul>;
    }
    case 'table':
      return <BookTable {...block} />;
    case 'drawing':
    case 'plate':
      return <BookDrawing {...block} />;
    case 'contents':
      return null;
    case 'link':
      return <p class="design-link">{block.link}</p>;
    case 'room':
      return <div class="writing-room" style={{ height: `${1.8 * block.lines}rem` }} />;
    default:
      return block satisfies never;
  }
}

function BookTable({ columns, rows }: Extract<ScreenBlock, { kind: 'table' }>) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
    <div class="book-table" tabIndex={0}>
      <table>
        <thead>
          <tr>
            {columns.map(({ head, align }, at) =>
              head === '' ? (
                <td key={at} />
              ) : (
                <th key={at} scope="col" class={align ?? 'left'}>
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <tr key={at}>
              {row.length === 1 ? (
                <td colSpan={columns.length} class="spanning">
                  {row[0]}
                </td>
              ) : (
                row.map((cell, i) => (
                  <td key={i} class={columns[i]?.align ?? 'left'}>
                    {cell}
                  </td>
                ))
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A drawing as the page has it: a small picture of paper, shown in the whole window at a click. */
function BookDrawing({ scene, caption }: { readonly scene: ScreenScene; readonly caption?: string }) {
  const { x, y, width, height } = scene.box;
  const [isLarge, setLarge] = useState(false);
  const name = caption ?? words.book.figure;
  return (
    <figure>
      <div class="scene drawn-page">
        <svg
          role="img"
          aria-label={name}
          viewBox={`${x - 1} ${y - 1} ${width + 2} ${height + 2}`}
          style={{ maxWidth: `${(width + 2) * PX_PER_MM}px` }}
        >
          <SceneLines scene={scene} />
        </svg>
        <button
          type="button"
          class="enlarge"
          title={words.book.enlarge}
          aria-label={words.book.enlargeWhat(name)}
          onClick={() => setLarge(true)}
        />
      </div>
      {isLarge ? <LargeDrawing scene={scene} name={name} onClose={() => setLarge(false)} /> : null}
      {caption === undefined ? null : <figcaption>{caption}</figcaption>}
    </figure>
  );
}

interface LargeDrawingProps {
  readonly scene: ScreenScene;
  readonly name: string;
  readonly onClose: () => void;
}

/** A drawing in the whole window, to be zoomed and moved; Escape closes it. */
function LargeDrawing({ scene, name, onClose }: LargeDrawingProps) {
  const own = useRef<HTMLDialogElement>(null);
  useEffect(() => own.current?.showModal(), []);
  return (
    <dialog ref={own} class="large-drawing" aria-label={name} onClose={onClose}>
      <SceneView scene={scene} label={name} />
      <Button look="main" onClick={() => own.current?.close()}>
        {words.book.close}
      </Button>
    </dialog>
  );
}
