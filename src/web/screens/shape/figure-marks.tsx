import { useEffect, useRef } from 'preact/hooks';
import type { ScreenFigure } from '../../engine/answers/picture.ts';
import { words } from '../../words/en.ts';

interface FigureMarksProps {
  readonly figures: readonly ScreenFigure[];
  readonly edited: string | undefined;
  readonly onEdit: (name: string) => void;
}

/** The dimensions' figures where they stand, each to be clicked and typed. */
export function FigureMarks({ figures, edited, onEdit }: FigureMarksProps) {
  const all = useRef<SVGGElement>(null);
  const last = useRef<string | undefined>(undefined);
  // Once it is typed, the keys are where they were: on the figure.
  useEffect(() => {
    if (edited === undefined && last.current !== undefined && document.activeElement === document.body)
      all.current?.querySelector<SVGTextElement>(`[data-figure="${CSS.escape(last.current)}"]`)?.focus();
    last.current = edited;
  }, [edited]);
  return (
    <g class="lettering figures-drawn" ref={all}>
      {figures.map(({ name, text }, at) => (
        <text
          key={`${name} ${at}`}
          role="button"
          tabindex={0}
          data-figure={name}
          aria-label={words.shape.typeFigure(name.replaceAll('_', ' '), text.text)}
          class={`figure ${name === edited ? 'edited' : ''}`}
          transform={`translate(${text.x} ${text.y})${text.turn === 0 ? '' : ` rotate(${text.turn})`}`}
          font-size={text.size}
          text-anchor={text.anchor}
          onClick={(event) => {
            event.stopPropagation();
            onEdit(name);
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' && event.key !== ' ') return;
            event.preventDefault();
            onEdit(name);
          }}
        >
          {text.text}
        </text>
      ))}
    </g>
  );
}
