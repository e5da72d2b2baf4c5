import { type ToolPlace, toolAt } from '../../../routing/index.ts';
import type { RoutingInHand } from '../../engine/answers/routing.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

interface RoutingFactsProps {
  readonly routing: RoutingInHand;
  readonly onPlace: (place: ToolPlace) => void;
}

/** What follows from part and tool: where the bit leaves wood, how deep it goes in which pass, and the figures to work by. */
export function RoutingFacts({ routing, onPlace }: RoutingFactsProps) {
  const said = words.routing;
  const { differences, depth, facts } = routing;
  return (
    <>
      <section aria-label={said.differences}>
        <h2>{said.differences}</h2>
        {differences.length === 0 ? (
          <p class="hint">{said.whole}</p>
        ) : (
          <ul class="plain-list">
            {differences.map(({ kind, at, edges, reach }, i) => (
              <li key={i}>
                <Button
                  look="quiet"
                  onClick={() => {
                    const place = toolAt(routing.path, routing.region, routing, at);
                    if (place !== undefined) onPlace(place);
                  }}
                >
                  {edges.join(', ')}: {kind === 'left' ? said.left(reach) : said.lost(reach)}
                </Button>
              </li>
            ))}
          </ul>
        )}
      </section>
      <section aria-label={said.passes}>
        <h2>{said.passes}</h2>
        {depth.possible ? (
          <ol>
            {depth.passes.map((pass) => (
              <li key={pass.words}>{pass.words}</li>
            ))}
          </ol>
        ) : (
          <p class="problem">{said.noPasses}</p>
        )}
        {depth.remarks.map((remark) => (
          <p key={remark.code} class={remark.severity === 'stop' ? 'problem' : 'hint'}>
            {remark.words} {remark.cure ?? ''}
          </p>
        ))}
      </section>
      <section aria-label={said.figures}>
        <h2>{said.figures}</h2>
        <dl class="facts">
          {facts.map(({ name, value }) => (
            <div key={name}>
              <dt>{said.facts[name]}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        <p class="hint">{said.caution}</p>
      </section>
    </>
  );
}
