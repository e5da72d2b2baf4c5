import { type Design, usualRoom } from '../../../design/index.ts';
import { words } from '../../words/en.ts';
import { WoodField } from './wood-field.tsx';

const said = words.wood;

/** The air that the wood will live in, and what it is at now. */
export function ClimateFields({ design }: { readonly design: Design }) {
  const { room, shop } = design.wood?.climate ?? {};
  const { dry, damp } = room ?? usualRoom();
  // Where nothing is said yet the first figure that is typed stands beside usual ones.
  const humidity = (season: 'dry' | 'damp') =>
    room === undefined
      ? {
          path: ['climate', 'room'],
          write: (text: string) => ({ dry, damp, [season]: { ...{ dry, damp }[season], humidity: text } }),
        }
      : { path: ['climate', 'room', season, 'humidity'] };
  return (
    <section aria-label={said.climate}>
      <h2>{said.climate}</h2>
      <WoodField label={said.dry} of="percent" value={dry.humidity} {...humidity('dry')} />
      <WoodField label={said.damp} of="percent" value={damp.humidity} {...humidity('damp')} />
      <WoodField
        label={said.temperature}
        of="temperature"
        path={['climate', 'room']}
        value={damp.temperature}
        write={(text) => ({
          dry: { ...dry, temperature: text },
          damp: { ...damp, temperature: text },
        })}
      />
      <WoodField
        label={said.shop}
        of="percent"
        optional
        path={['climate', 'shop']}
        value={shop !== undefined && 'moisture' in shop ? shop.moisture : undefined}
        write={(text) => ({ moisture: text })}
      />
    </section>
  );
}
