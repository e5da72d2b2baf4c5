import type { ScreenFigure } from '../../engine/answers/picture.ts';
import { words } from '../../words/en.ts';

interface FigureMarksProps {
  readonly figures: readonly ScreenFigure[];
  readonly edited: string | undefined;
  readonly onEdit: (name: string) => void;
}

/** The dimensions' figures where they stand, each to be clicked and typed. */
export function FigureMarks({ figures, edited, onEdit }: FigureMarksProps) {
  return (
    <g class="lettering figures-drawn">
      {figures.map(({ name, text }, at) => (
        <text
          key={`${name} ${at}`}
          role="button"
          tabindex={0}
          aria-label={words.shape.typeFigure(name, text.text)}
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
