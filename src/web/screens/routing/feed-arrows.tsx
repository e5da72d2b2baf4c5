import type { FeedArrow } from '../../engine/answers/routing.ts';
import { words } from '../../words/en.ts';

/** Which way the tool is fed along each edge; against the grain in the accent, with a bar across it. */
export function FeedArrows({
  arrows,
  zoom,
}: {
  readonly arrows: readonly FeedArrow[];
  readonly zoom: number;
}) {
  return (
    <g class="feed-arrows">
      {arrows.map(({ at, angle, grain }, i) => (
        <g
          key={i}
          class={`feed-${grain}`}
          transform={`translate(${at.x} ${-at.y}) rotate(${(-angle * 180) / Math.PI}) scale(${1 / zoom})`}
        >
          <title>{words.routing.feed[grain]}</title>
          <path d="M-11 0H9M2 -5L10 0L2 5" />
          {grain === 'against' ? <path d="M-5 -6V6" /> : null}
          {grain === 'end' ? <path d="M-6 -5V5M-9 -5V5" /> : null}
        </g>
      ))}
    </g>
  );
}
