import { useRef } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { boxForScreen, type ScreenScene } from '../../../drawing/index.ts';
import { joinBoxes, type Similarity } from '../../../geometry/index.ts';
import { pointOfEvent } from '../../drawing/point-of-event.ts';
import { SceneLines } from '../../drawing/scene-lines.tsx';
import { SceneView } from '../../drawing/scene-view.tsx';
import type { SheetsInHand } from '../../engine/answers/sheets.ts';
import { preview } from '../../state/current.ts';
import { words } from '../../words/en.ts';
import { layMoved, showMoved } from './lay.ts';

interface TapedViewProps {
  readonly sheets: SheetsInHand;
  readonly scene: ScreenScene;
  readonly design: Design;
  readonly picked: string | undefined;
  readonly onPick: (sheet: string) => void;
}

/** mm that an arrow key moves the pattern, and with Shift. */
const NUDGE = { plain: 1, shift: 10 } as const;

/** The sheets with their seams and the pattern on them, which can be dragged. */
export function TapedView({ sheets, scene, design, picked, onPick }: TapedViewProps) {
  const box = boxForScreen(sheets.sheets.map(({ paper }) => paper).reduce(joinBoxes));
  const grip = useRef<
    | {
        readonly from: { readonly x: number; readonly y: number };
        readonly sheets: SheetsInHand;
        readonly design: Design;
      }
    | undefined
  >(undefined);
  const wasDragged = useRef(false);
  const said = words.sheets;
  const shiftOf = (event: PointerEvent) => {
    const at = pointOfEvent(event);
    const start = grip.current;
    return at && start && { x: at.x - start.from.x, y: at.y - start.from.y };
  };
  const onPointerDown = (event: PointerEvent): void => {
    const from = pointOfEvent(event);
    if (event.button !== 0 || from === undefined) return;
    event.stopPropagation();
    (event.currentTarget as SVGElement).setPointerCapture(event.pointerId);
    grip.current = { from, sheets, design };
  };
  const onPointerMove = (event: PointerEvent): void => {
    const shift = shiftOf(event);
    if (shift === undefined) return;
    event.stopPropagation();
    void showMoved(grip.current!.design, grip.current!.sheets, { shift });
  };
  const onPointerUp = (event: PointerEvent): void => {
    const shift = shiftOf(event);
    const start = grip.current;
    grip.current = undefined;
    if (shift === undefined || start === undefined) return;
    wasDragged.current = Math.hypot(shift.x, shift.y) >= 0.5;
    if (!wasDragged.current) preview.value = [];
    else void layMoved(start.design, start.sheets, { shift }, said.moved);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const way = ARROWS[event.key];
    if (way === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const by = event.shiftKey ? NUDGE.shift : NUDGE.plain;
    void layMoved(design, sheets, { shift: { x: by * way.x, y: by * way.y } }, said.moved);
  };
  return (
    <SceneView scene={{ box, lines: [], texts: [] }} label={said.drawing(sheets.title)}>
      {(zoom) => (
        <>
          {sheets.sheets.map(({ name, paper }) => (
            <rect key={name} class="sheet-paper" {...rectOf(boxForScreen(paper))} />
          ))}
          <g transform={matrixOf(sheets.toSheets)} class="laid-pattern">
            <SceneLines scene={scene} />
          </g>
          {sheets.sheets.map(({ name, cell, page }) => (
            <g key={name} class={picked === name ? 'sheet-cell picked' : 'sheet-cell'}>
              <rect {...rectOf(boxForScreen(cell))} />
              <text x={cell.minX + 6 / zoom} y={-cell.minY - 6 / zoom} font-size={13 / zoom}>
                {labelWithin((cell.maxX - cell.minX) * zoom - 12, [said.sheet(name, page), `${page}`])}
              </text>
            </g>
          ))}
          {sheets.seams.map(({ name, from, to }) => (
            <text
              key={name}
              class="seam-name"
              x={(from.x + to.x) / 2}
              y={-(from.y + to.y) / 2}
              font-size={12 / zoom}
            >
              {name}
            </text>
          ))}
          {/* biome-ignore lint/a11y/useSemanticElements: a place in a drawing cannot be a button element */}
          <rect
            class="lay-ground"
            {...rectOf(box)}
            role="button"
            tabindex={0}
            aria-label={said.grab}
            onPointerDown={onPointerDown}
            onPointerMove={onPointerMove}
            onPointerUp={onPointerUp}
            onPointerCancel={onPointerUp}
            onKeyDown={onKeyDown}
            onClick={(event) => {
              if (wasDragged.current) return;
              const at = pointOfEvent(event as unknown as PointerEvent);
              const hit = at && sheets.sheets.find(({ cell }) => isIn(cell, at));
              if (hit !== undefined) onPick(hit.name);
            }}
          />
        </>
      )}
    </SceneView>
  );
}

/** px that a letter of a label is wide on the average. */
const LETTER = 6.2;

/** The fullest of some labels that a sheet has room for, px; none on a sheet too small for any. */
function labelWithin(room: number, labels: readonly string[]): string {
  return labels.find((label) => label.length * LETTER <= room) ?? '';
}

const ARROWS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** The same move in a drawing whose y runs down. */
function matrixOf({ turn, shift }: Similarity): string {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return `matrix(${cos} ${-sin} ${sin} ${cos} ${shift.x} ${-shift.y})`;
}

function rectOf({ x, y, width, height }: ScreenScene['box']) {
  return { x, y, width, height };
}

function isIn(
  { minX, minY, maxX, maxY }: SheetsInHand['sheets'][number]['cell'],
  { x, y }: { readonly x: number; readonly y: number },
): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}
