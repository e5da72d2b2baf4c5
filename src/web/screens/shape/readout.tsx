import { formatAngle, formatLength } from '../../../measure/index.ts';
import type { ListedEdge, ListedPart } from '../../engine/answers/parts.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { lengthStyle } from '../../state/lengths.ts';
import { pull, pulledTo } from '../../state/pulling.ts';
import { hovered, selection } from '../../state/selection.ts';
import { words } from '../../words/en.ts';

/** Names what the pointer is over, or what is chosen, and measures it; while a point is pulled, what follows it. */
export function Readout() {
  const parts = useAnswer('parts') ?? [];
  const form = useAnswer('form');
  const shown = hovered.value.part === undefined ? selection.value : hovered.value;
  const part = parts.find(({ name }) => name === shown.part);
  if (pull.value !== undefined && pulledTo.value !== undefined) {
    const { parameters, kept } = pulledTo.value;
    const said = Object.entries(parameters).map(([name, typed]) => {
      const label = form?.parameters.find((each) => each.name === name)?.label ?? name;
      return `${label} ${typed}`;
    });
    return (
      <p class="readout pulling" role="status">
        {[...said, ...(kept.length === 0 ? [] : [words.shape.keptBy(kept)])].join(' · ')}
      </p>
    );
  }
  return <p class="readout">{part === undefined ? words.shape.hoverHint : sayPart(part, shown.edge)}</p>;
}

function sayPart({ label, count, marks, edges }: ListedPart, edge: string | undefined): string {
  const many = marks.length > 0 ? marks.join(', ') : `${count} ×`;
  const names = (edge ?? '').split('|');
  const found = edges.filter(({ name }) => names.includes(name));
  return [`${label} (${many})`, ...found.map(sayEdge)].join(' · ');
}

function sayEdge({ name, length, radius, lean }: ListedEdge): string {
  const long = formatLength(length, lengthStyle());
  const round = radius === undefined ? '' : `, ${words.shape.radius(formatLength(radius, lengthStyle()))}`;
  const leans =
    lean === undefined
      ? ''
      : `, ${words.shape.lean(formatAngle(lean, { unit: 'deg', decimals: 1 }).replace('.0°', '°'))}`;
  return `${name.replaceAll('_', ' ')}: ${long}${round}${leans}`;
}
