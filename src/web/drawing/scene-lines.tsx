import { memo } from 'preact/compat';
import { LINE_STYLES, type LineRole, type ScreenLine, type ScreenScene } from '../../drawing/index.ts';

/** px on the screen per mm of a line's width on paper. */
const PX_PER_MM = 4;

/** Lines shown as chosen: of some parts; of one edge of theirs alone, where it is named. */
export interface ChosenLines {
  readonly parts: readonly string[];
  readonly edge?: string;
}

interface SceneLinesProps {
  readonly scene: ScreenScene;
  readonly selected?: ChosenLines;
}

/** The lines and the lettering of a scene. Widths and dashes keep their size on the screen; colours are those of the theme. */
export const SceneLines = memo(function SceneLines({ scene, selected }: SceneLinesProps) {
  return (
    <>
      {scene.lines.map((line, at) => (
        <path key={at} d={line.data} class={classOf(line, selected)} {...dashes(line)} />
      ))}
      {scene.lines.map((line, at) =>
        line.part === undefined ? null : (
          <path key={`hit ${at}`} d={line.data} class="hit" data-part={line.part} data-edge={line.edge} />
        ),
      )}
      <g class="lettering">
        {scene.texts.map(({ x, y, turn, size, anchor, bold, role, text }, at) => (
          <text
            key={at}
            transform={`translate(${x} ${y})${turn === 0 ? '' : ` rotate(${turn})`}`}
            font-size={size}
            text-anchor={anchor}
            class={`ink-${LINE_STYLES[role].ink}${bold ? ' bold' : ''}`}
          >
            {text}
          </text>
        ))}
      </g>
    </>
  );
});

function classOf({ role, fill, part, edge }: ScreenLine, selected: SceneLinesProps['selected']): string {
  const isChosen =
    selected !== undefined &&
    part !== undefined &&
    selected.parts.includes(part) &&
    (selected.edge === undefined || selected.edge === '' || selected.edge === edge);
  const filled = fill === undefined ? 'line' : `fill-${fill}`;
  return `${filled} ink-${LINE_STYLES[role].ink} role-${role}${isChosen ? ' chosen' : ''}`;
}

function dashes({ role, fill }: ScreenLine) {
  if (fill !== undefined) return {};
  const { width, dash } = LINE_STYLES[role as LineRole];
  return {
    'stroke-width': width * PX_PER_MM,
    ...(dash.length === 0 ? {} : { 'stroke-dasharray': dash.map((mm) => mm * PX_PER_MM).join(' ') }),
  };
}
