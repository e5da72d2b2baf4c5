import { describe, expect, it } from 'vitest';
import {
  compute,
  type Design,
  designAfterPull,
  type HeldHandle,
  holdHandle,
  type Memo,
  pullHeld,
  settleHeld,
} from '../../src/design/index.ts';
import type { Vec } from '../../src/geometry/index.ts';
import { sampleDesign } from './sample-design.ts';

function held(design: Design, name: string, memo?: Memo): HeldHandle {
  const taken = holdHandle(design, name, memo);
  if (!taken.ok) throw new Error(JSON.stringify(taken.problems));
  return taken.value;
}

function handleAt(design: Design, name: string): Vec {
  const computed = compute(design, { wanted: { patterns: [] } });
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems));
  return computed.value.sketch.handles!.find((each) => each.name === name)!.at;
}

describe('a handle of a design', () => {
  it('is pulled to a place where the computed design then has it', () => {
    const design = sampleDesign('curved-leg', ['leg']);
    const start = handleAt(design, 'ankle');
    const target = { x: start.x + 4.3, y: start.y - 21.7 };
    const hand = held(design, 'ankle');
    const after = designAfterPull(hand, pullHeld(hand, target)!);
    const { x, y } = handleAt(after, 'ankle');
    expect(Math.hypot(x - target.x, y - target.y)).toBeLessThan(0.001);
    expect(
      Object.keys(design.parameters).filter((name) => design.parameters[name] !== after.parameters[name]),
    ).toEqual(['ankle_width', 'ankle_height']);
  });

  it.each([
    ['mm' as const, /^\d+(\.\d)? mm$/],
    ['in' as const, /^(\d+ )?\d+(\/(2|4|8|16|32))? in$/],
  ])('settles in the steps of a design in %s', (unit, pattern) => {
    const design = sampleDesign('curved-leg', ['leg'], unit);
    const start = handleAt(design, 'ankle');
    const target = { x: start.x + 4.3, y: start.y - 21.7 };
    const hand = held(design, 'ankle');
    const after = designAfterPull(hand, settleHeld(hand, pullHeld(hand, target)!, target)!);
    expect(after.parameters.ankle_width).toMatch(pattern);
    expect(after.parameters.ankle_height).toBe(Number((after.parameters.ankle_height as number).toFixed(3)));
    const { x, y } = handleAt(after, 'ankle');
    // Half a step of each: 0.05 mm or 0.4 mm across, 0.0005 of 715 mm along.
    expect(Math.abs(x - target.x)).toBeLessThan(unit === 'mm' ? 0.06 : 0.45);
    expect(Math.abs(y - target.y)).toBeLessThan(0.5);
  });

  it('leaves alone what was measured on the work', () => {
    const design = {
      ...sampleDesign('curved-leg', ['leg']),
      measured: { parameters: { ankle_height: 0.22 } },
    };
    const hand = held(design, 'ankle');
    const pulled = pullHeld(hand, { x: 70, y: 20 })!;
    expect(pulled.values.ankle_height).toBe(0.22);
    expect(pulled.reached).toBe(false);
  });

  it('tells of a handle that is not there', () => {
    const taken = holdHandle(sampleDesign('curved-leg', ['leg']), 'ankles');
    expect(taken.ok ? [] : taken.problems.map(({ message }) => message)).toEqual([
      'there is no handle "ankles": did you mean "ankle"?',
    ]);
  });
});
