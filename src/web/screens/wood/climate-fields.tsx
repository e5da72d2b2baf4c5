import type { Design } from '../../../design/index.ts';
import { words } from '../../words/en.ts';
import { WoodField } from './wood-field.tsx';

/** A heated room over a year in a temperate climate, to begin with (common practice). */
const ROOM = {
  dry: { temperature: '21 °C', humidity: '30 %' },
  damp: { temperature: '21 °C', humidity: '60 %' },
} as const;

/** The air that the wood will live in, and what it is at now. */
export function ClimateFields({ design }: { readonly design: Design }) {
  const said = words.wood;
  const { room, shop } = design.wood?.climate ?? {};
  const { dry, damp } = room ?? ROOM;
  const field = (label: string, path: readonly string[], value: string | number) => (
    <WoodField
      key={path.join('.')}
      label={label}
      path={room === undefined ? ['climate', 'room'] : ['climate', 'room', ...path]}
      value={value}
      write={(text) => (room === undefined ? roomWith(path, text) : text)}
    />
  );
  return (
    <section aria-label={said.climate}>
      <h2>{said.climate}</h2>
      {field(said.dry, ['dry', 'humidity'], dry.humidity)}
      {field(said.damp, ['damp', 'humidity'], damp.humidity)}
      <WoodField
        label={said.temperature}
        path={['climate', 'room']}
        value={damp.temperature}
        write={(text) => ({
          dry: { ...dry, temperature: text },
          damp: { ...damp, temperature: text },
        })}
      />
      <WoodField
        label={said.shop}
        path={['climate', 'shop']}
        value={shop !== undefined && 'moisture' in shop ? shop.moisture : undefined}
        write={(text) => ({ moisture: text })}
      />
    </section>
  );
}

function roomWith([season, figure]: readonly string[], text: string): unknown {
  return { ...ROOM, [season!]: { ...ROOM[season as 'dry' | 'damp'], [figure!]: text } };
}
