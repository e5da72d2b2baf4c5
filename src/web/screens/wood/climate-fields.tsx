import { type Design, USUAL_MADE, usualRoom } from '../../../design/index.ts';
import { words } from '../../words/en.ts';
import { WoodField } from './wood-field.tsx';

const said = words.wood;

/** The air that the wood will live in, and what it is at now. */
export function ClimateFields({ design }: { readonly design: Design }) {
  const { room, shop } = design.wood?.climate ?? {};
  const { dry, damp } = room ?? usualRoom();
  // Where nothing is said yet the first figure that is typed stands beside usual ones.
  const inRoom = (season: 'dry' | 'damp', what: 'humidity' | 'temperature') =>
    room === undefined
      ? {
          path: ['climate', 'room'],
          write: (text: string) => ({ dry, damp, [season]: { ...{ dry, damp }[season], [what]: text } }),
        }
      : { path: ['climate', 'room', season, what] };
  return (
    <section aria-label={said.climate}>
      <h2>{said.climate}</h2>
      <WoodField label={said.dry} of="percent" value={dry.humidity} {...inRoom('dry', 'humidity')} />
      <WoodField
        label={said.dryTemperature}
        of="temperature"
        value={dry.temperature}
        {...inRoom('dry', 'temperature')}
      />
      <WoodField label={said.damp} of="percent" value={damp.humidity} {...inRoom('damp', 'humidity')} />
      <WoodField
        label={said.dampTemperature}
        of="temperature"
        value={damp.temperature}
        {...inRoom('damp', 'temperature')}
      />
      <WoodField
        label={said.shop}
        of="percent"
        optional
        path={['climate', 'shop']}
        value={shop === undefined ? USUAL_MADE : 'moisture' in shop ? shop.moisture : undefined}
        write={(text) => ({ moisture: text })}
      />
    </section>
  );
}
