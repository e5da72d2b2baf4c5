import { useEffect, useRef } from 'preact/hooks';
import type { OnScreen } from '../../drawing/scene-view.tsx';
import type { ScreenFigure } from '../../engine/answers/picture.ts';
import { words } from '../../words/en.ts';
import { middleOf, reachOf } from './place-of-figure.ts';

interface FigureMarksProps {
  readonly figures: readonly ScreenFigure[];
  readonly edited: string | undefined;
  readonly onEdit: (name: string) => void;
  /** One of them is pointed at or has the keys: it is likely to be typed. */
  readonly onNear: () => void;
  /** px per unit of the scene. */
  readonly zoom: number;
  readonly screen: OnScreen;
}

/** px that a finger hits, each way (WCAG 2.2, 2.5.8, asks for 24; common practice for touch 40 to 48). */
const FINGER = 44;

/** The dimensions' figures where they stand, each to be clicked and typed. */
export function FigureMarks({ figures, edited, onEdit, onNear, zoom, screen }: FigureMarksProps) {
  const all = useRef<SVGGElement>(null);
  const last = useRef<string | undefined>(undefined);
  // Once it is typed, the keys are where they were: on the figure.
  useEffect(() => {
    if (edited === undefined && last.current !== undefined && document.activeElement === document.body)
      all.current?.querySelector<SVGGElement>(`[data-figure="${CSS.escape(last.current)}"]`)?.focus();
    last.current = edited;
  }, [edited]);
  /** Where the reaches of several overlap, the figure whose middle is nearest is meant. */
  const nearest = (at: { readonly x: number; readonly y: number }, hit: string): string =>
    figures
      .map(({ name, text }) => ({ name, off: Math.hypot(middleOf(text).x - at.x, middleOf(text).y - at.y) }))
      .reduce((best, each) => (each.off < best.off ? each : best), { name: hit, off: Infinity }).name;
  return (
    <g class="lettering figures-drawn" ref={all}>
      {figures.map(({ name, label, text }, at) => {
        const reach = reachOf(text, FINGER / zoom);
        return (
          <g
            key={`${name} ${at}`}
            role="button"
            tabindex={0}
            data-figure={name}
            aria-label={words.shape.typeFigure(label, text.text)}
            class={`figure ${name === edited ? 'edited' : ''}`}
            transform={`translate(${text.x} ${text.y})${text.turn === 0 ? '' : ` rotate(${text.turn})`}`}
            onPointerEnter={onNear}
            onFocus={onNear}
            onClick={(event) => {
              event.stopPropagation();
              const isOnFigure = (event.target as Element).localName === 'text';
              onEdit(isOnFigure ? name : nearest(screen.at({ x: event.clientX, y: event.clientY }), name));
            }}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' && event.key !== ' ') return;
              event.preventDefault();
              onEdit(name);
            }}
          >
            <rect class="figure-reach" {...reach} />
            <text font-size={text.size} text-anchor={text.anchor}>
              {text.text}
            </text>
          </g>
        );
      })}
    </g>
  );
}
