import { describe, expect, it } from 'vitest';
import { compute, type Design, openSession } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const leg = sampleDesign('splayed-leg', ['leg']);
const higher: Design = { ...leg, parameters: { ...leg.parameters, overall_height: '760 mm' } };

/** Pauses that end when told. */
function gate() {
  const waiting: (() => void)[] = [];
  return {
    pause: () => new Promise<void>((go) => void waiting.push(go)),
    open: () => {
      for (const go of waiting.splice(0)) go();
    },
    waits: () => waiting.length,
  };
}

async function drive(door: ReturnType<typeof gate>, pending: Promise<unknown>): Promise<void> {
  let over = false;
  const end = () => {
    over = true;
  };
  pending.then(end, end);
  while (!over) {
    door.open();
    await new Promise((next) => setImmediate(next));
  }
}

describe('a session', () => {
  it('finds what a computation from nothing finds, with pauses between its steps', async () => {
    const door = gate();
    const pending = openSession(door).compute(leg);
    expect(door.waits()).toBe(1);
    await drive(door, pending);
    expect(await pending).toEqual({ kind: 'computed', result: compute(leg) });
  });

  it('abandons a computation for a newer one, and answers the newer one', async () => {
    const door = gate();
    const session = openSession(door);
    const older = session.compute(leg);
    const newer = session.compute(higher);
    await drive(door, Promise.all([older, newer]));
    expect(await older).toEqual({ kind: 'abandoned' });
    expect(await newer).toEqual({ kind: 'computed', result: compute(higher) });
  });

  it('abandons without a newer one when told, and can be asked again', async () => {
    const door = gate();
    const session = openSession(door);
    const pending = session.compute(leg);
    session.abandon();
    await drive(door, pending);
    expect(await pending).toEqual({ kind: 'abandoned' });
    const again = session.compute(leg);
    await drive(door, again);
    expect(await again).toMatchObject({ kind: 'computed', result: { ok: true } });
  });

  it('goes on at once where no pause is due', async () => {
    const { kind } = await openSession({ pause: () => undefined }).compute(leg);
    expect(kind).toBe('computed');
  });

  it('gives the very same parts and patterns where nothing changed', async () => {
    const session = openSession({ pause: () => undefined });
    const [first, again] = [await session.compute(leg), await session.compute({ ...leg })];
    if (first.kind !== 'computed' || again.kind !== 'computed') throw new Error('abandoned');
    if (!first.result.ok || !again.result.ok) throw new Error('sound');
    expect(again.result.value.patterns[0]!.pattern).toBe(first.result.value.patterns[0]!.pattern);
    expect(again.result.value.parts[0]!.part).toBe(first.result.value.parts[0]!.part);
  });
});
