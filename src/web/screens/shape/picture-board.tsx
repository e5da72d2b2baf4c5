import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ChosenLines } from '../../drawing/scene-lines.tsx';
import { type Hit, SceneView } from '../../drawing/scene-view.tsx';
import type { FigureViewOptions } from '../../engine/answers/figures.ts';
import type { ListedPart } from '../../engine/answers/parts.ts';
import type { PictureOptions } from '../../engine/answers/picture.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { figureShown, hasPhotographs } from '../../figure/use-figures.ts';
import { ViewFigures } from '../../figure/view-figures.tsx';
import { driversOfPicture } from '../../state/drivers.ts';
import { hovered, type Selection, selection } from '../../state/selection.ts';
import { words } from '../../words/en.ts';
import { CombChoice, CombMarks } from './comb-marks.tsx';
import { FigureChoice } from './figure-choice.tsx';
import { FigureEditor } from './figure-editor.tsx';
import { FigureMarks } from './figure-marks.tsx';
import { HandleMarks } from './handle-marks.tsx';
import { NoDrawing } from './no-drawing.tsx';
import { middleOf } from './place-of-figure.ts';
import { Readout } from './readout.tsx';
import { TitleBlock } from './title-block.tsx';

/** px on the screen per mm of a drawing, as CSS has it, and px left round it. */
const PX_PER_MM = 96 / 25.4;
const MARGIN = 24;
/** Capitals of the figures, mm at the usual size of text. */
const LETTERS = 2.6;
/** Zoomed by this or more, the figures are laid out anew for the larger drawing. */
const LARGER = [1, 1.6, 2.5, 4, 6.5, 10] as const;

/** The drawing of the shape screen: it is the control. */
export function PictureBoard({ of }: { readonly of: PictureOptions['of'] }) {
  const board = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<PictureOptions['room']>();
  const [times, setTimes] = useState(1);
  const [edited, setEdited] = useState<string>();
  const [piece, setPiece] = useState<string>();
  const part = 'part' in of ? of.part : undefined;
  const hasFigures = hasPhotographs();
  const figureOf =
    !hasFigures || !figureShown.value
      ? undefined
      : part === undefined || piece === undefined
        ? of
        : { part, piece };
  useLayoutEffect(() => {
    const measure = (): void => {
      const { width, height } = board.current!.getBoundingClientRect();
      const inside = (px: number): number => Math.max(30, Math.round((px - 2 * MARGIN) / PX_PER_MM));
      setRoom((before) => {
        const now = { width: inside(width), height: inside(height) };
        return before?.width === now.width && before.height === now.height ? before : now;
      });
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(board.current!);
    return () => watcher.disconnect();
  }, []);
  return (
    <div class="board">
      <div class="board-drawing">
        <div class="board-room" ref={board}>
          {room === undefined ? null : (
            <Shown
              of={of}
              figureOf={figureOf}
              room={room}
              times={times}
              onZoom={setTimes}
              edited={edited}
              onEdit={setEdited}
            />
          )}
        </div>
      </div>
      <div class="board-foot">
        <Readout />
        {part === undefined ? null : <CombChoice part={part} />}
        {hasFigures ? <FigureChoice part={part} piece={piece} onPiece={setPiece} /> : null}
        <TitleBlock />
      </div>
    </div>
  );
}

interface ShownProps {
  readonly of: PictureOptions['of'];
  /** Whose figure of the wood is shown; nobody's where there is none. */
  readonly figureOf: FigureViewOptions['of'] | undefined;
  readonly room: PictureOptions['room'];
  readonly times: number;
  readonly onZoom: (times: number) => void;
  readonly edited: string | undefined;
  readonly onEdit: (name: string | undefined) => void;
}

function Shown({ of, figureOf, room, times, onZoom, edited, onEdit }: ShownProps) {
  const step = LARGER.findLast((each) => each <= times + 0.01) ?? 1;
  const letters = LETTERS * (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16);
  const asked = { width: Math.round(room.width * step), height: Math.round(room.height * step) };
  const answer = useAnswer('picture', { of, room: asked, letters });
  const last = useRef(answer);
  last.current = answer ?? last.current;
  const picture = last.current;
  const handles = useAnswer('handles', { of }) ?? [];
  const parts = useAnswer('parts') ?? [];
  const selected = useChosenLines(of, parts);
  if (picture === undefined) return <NoDrawing />;
  /** What was hit, by the name of the part that is made. */
  const made = (hit: Hit | undefined): Selection =>
    hit === undefined
      ? {}
      : { ...hit, part: parts.find(({ placed }) => placed.includes(hit.part))?.name ?? hit.part };
  const figure = picture.figures.find(({ name }) => name === edited);
  return (
    <SceneView
      scene={picture.scene}
      scale={picture.scale}
      label={picture.name}
      {...(selected === undefined ? {} : { selected })}
      onZoom={onZoom}
      onHover={(hit) => {
        hovered.value = made(hit);
      }}
      onPick={(hit) => {
        selection.value = made(hit);
        onEdit(undefined);
      }}
      under={(screen) =>
        figureOf === undefined ? null : <ViewFigures of={figureOf} screen={screen} scale={picture.scale} />
      }
      overlay={(screen) => (
        <>
          {picture.left.length === 0 ? null : (
            <p class="more-figures">{words.shape.more(picture.left.length)}</p>
          )}
          {figure === undefined ? null : (
            <FigureEditor
              key={figure.name}
              of={of}
              figure={figure}
              at={screen.place(middleOf(figure.text))}
              onDone={() => onEdit(undefined)}
            />
          )}
        </>
      )}
    >
      {(zoom, screen) => (
        <>
          {'part' in of ? <CombMarks part={of.part} scale={picture.scale} /> : null}
          <FigureMarks
            figures={picture.figures}
            edited={edited}
            onEdit={onEdit}
            onNear={() => void driversOfPicture(of)}
            zoom={zoom}
            screen={screen}
          />
          <HandleMarks handles={handles} of={of} scale={picture.scale} zoom={zoom} screen={screen} />
        </>
      )}
    </SceneView>
  );
}

/** The lines of what is chosen: of a side of the base those of every place where the part stands. */
function useChosenLines(of: PictureOptions['of'], parts: readonly ListedPart[]): ChosenLines | undefined {
  const { part, edge } = selection.value;
  const placed = 'part' in of ? undefined : parts.find(({ name }) => name === part)?.placed;
  const shown = part === undefined ? [] : (placed ?? [part]);
  return useMemo(
    () => (shown.length === 0 ? undefined : { parts: shown, ...(edge === undefined ? {} : { edge }) }),
    [shown.join(' '), edge],
  );
}
