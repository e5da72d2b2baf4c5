import { describe, expect, it } from 'vitest';
import { evaluateForm, gripHandle, pullHandle, settleHandle } from '../../src/sketch/index.ts';
import { formText, messageOf, readOrThrow } from './form-text.ts';

const PARAMETERS = `
u: { label: M, kind: length, default: 50 mm, least: 0 mm, most: 100 mm, help: First. }
n: { label: N, kind: length, default: 60 mm, least: 0 mm, most: 200 mm, help: Second. }
turn: { label: Turn, kind: angle, default: 20 deg, least: 0 deg, most: 80 deg, help: Third. }
far: { label: Far, kind: yes-no, default: no, help: Fourth. }
legs: { label: Legs, kind: count, default: 4, least: 3, most: 8, help: Fifth. }`;

const text = (handles: string, more: { readonly points?: string; readonly checks?: string } = {}): string =>
  `${formText({ parameters: PARAMETERS, ...more })}\nhandles:\n  ${handles.trim().replaceAll('\n', '\n  ')}\n`.replace(
    'grammar: 1',
    'grammar: 3',
  );

const grip = (handles: string, more?: Parameters<typeof text>[1], fixed: readonly string[] = []) => {
  const taken = gripHandle(readOrThrow(text(handles, more)), {}, 'p', fixed);
  if (!taken.ok) throw new Error(taken.problems[0]!.message);
  return taken.value;
};

describe('handles of a form', () => {
  it('lie where their points lie, named corners and points of conditions among them', () => {
    const form = readOrThrow(
      text(`
p: { label: P, part: plate, at: 'u, n', moves: [u] }
q: { label: Q, part: plate, corner: plate.c, moves: [u, n], along: 90 deg }
r: { label: R, part: plate, at: b, moves: [n], when: far }`),
    );
    const sketch = evaluateForm(form, {});
    expect(sketch.ok && sketch.value.handles).toEqual([
      { name: 'p', label: 'P', moves: ['u'], of: 'part', part: 'plate', at: { x: 50, y: 60 } },
      {
        name: 'q',
        label: 'Q',
        moves: ['u', 'n'],
        of: 'part',
        part: 'plate',
        at: { x: 100, y: 60 },
        along: Math.PI / 2,
      },
    ]);
  });

  it.each([
    ['p: { label: P, part: plat, at: b, moves: [u] }', 'there is no part "plat": did you mean "plate"?'],
    ['p: { label: P, part: plate, at: b, moves: [c] }', 'there is no parameter "c"'],
    [
      'p: { label: P, part: plate, at: b, moves: [legs] }',
      'legs is a count: a handle moves lengths, angles and ratios',
    ],
    ['p: { label: P, part: plate, at: b, moves: [u, u] }', 'u is moved twice'],
    ['p: { label: P, part: plate, at: u + n, moves: [u] }', 'u + n is a length: a point is needed here'],
    ['p: { label: P, part: plate, corner: plate.e, moves: [u] }', 'there is no corner "e"'],
    ['p: { label: P, part: plate, moves: [u] }', 'p should be a handle with one of at and corner'],
    [
      'p: { label: P, views: [front], at: [u, n, 0 mm], moves: [u] }',
      'p is a point of the base, and this form has none: name its part',
    ],
    ['p: { label: P, part: plate, at: b, moves: [] }', 'moves should be at least one parameter'],
    ['p: { label: P, at: b, moves: [u] }', 'a handle is a map with part, views'],
  ])('%s is refused', (handle, expected) => {
    const named = handle.replaceAll('at: b,', "at: 'u, n',");
    expect(messageOf(text(named))).toBe(expected);
  });

  it('belong to grammar 3', () => {
    const old = text("p: { label: P, part: plate, at: 'u, n', moves: [u] }").replace(
      'grammar: 3',
      'grammar: 2',
    );
    expect(messageOf(old)).toBe('handles belong to grammar 3: this form says 2');
  });
});

describe('a pull', () => {
  it('changes each of two parameters by the square of its range, as the least change of shares asks', () => {
    // Least (da/100)² + (db/200)² with da + db = 50: by Lagrange's rule da : db = 100² : 200².
    const pulled = pullHandle(grip("p: { label: P, part: plate, at: 'u + n, 0', moves: [u, n] }"), {
      x: 160,
      y: 0,
    });
    expect(pulled).toMatchObject({ reached: true });
    expect(pulled!.values.u).toBeCloseTo(60, 3);
    expect(pulled!.values.n).toBeCloseTo(100, 3);
  });

  it('finds angle and length of an arm', () => {
    const arm = grip("p: { label: P, part: plate, at: 'u * cos(turn), u * sin(turn)', moves: [u, turn] }");
    const pulled = pullHandle(arm, { x: 30, y: 40 });
    expect(pulled).toMatchObject({ reached: true });
    expect(pulled!.values.u).toBeCloseTo(50, 6);
    expect(pulled!.values.turn).toBeCloseTo(Math.atan2(40, 30), 7);
  });

  it('goes to the end of a range and says so', () => {
    const pulled = pullHandle(grip("p: { label: P, part: plate, at: 'u, n', moves: [u, n] }"), {
      x: 130,
      y: 80,
    });
    expect(pulled).toMatchObject({
      reached: false,
      at: { x: 100, y: expect.closeTo(80, 4) },
      kept: { parameters: ['u'], checks: [] },
    });
    expect(pulled!.off).toBeCloseTo(30, 4);
  });

  it('slides along a check to the nearest place', () => {
    const checks = '- { needs: u + n <= 120 mm, say: "no more than {u} and {n}" }';
    const held = grip("p: { label: P, part: plate, at: 'u, n', moves: [u, n] }", { checks });
    const pulled = pullHandle(held, { x: 80, y: 90 });
    // The foot of the perpendicular from (80, 90) on x + y = 120.
    expect(pulled!.at.x).toBeCloseTo(55, 4);
    expect(pulled!.at.y).toBeCloseTo(65, 4);
    expect(pulled!.off).toBeCloseTo(50 / Math.SQRT2, 4);
    expect(pulled!.kept.checks).toEqual(['no more than 55 mm and 65 mm']);
  });

  it('keeps within a limit that goes in steps, and within a bent one', () => {
    const stepped = grip("p: { label: P, part: plate, at: 'u, n', moves: [u] }", {
      checks: '- { needs: "u <= floor(n / 7, 1 mm) * 8", say: too much }',
    });
    expect(pullHandle(stepped, { x: 90, y: 60 })!.at.x).toBeCloseTo(64, 6);
    const bent = grip("p: { label: P, part: plate, at: 'u, n', moves: [u, n] }", {
      checks: '- { needs: "hypot(u, n) <= 90 mm", say: too far }',
    });
    const pulled = pullHandle(bent, { x: 90, y: 120 })!;
    expect(pulled.at.x).toBeCloseTo(54, 3);
    expect(pulled.at.y).toBeCloseTo(72, 3);
    expect(Math.hypot(pulled.at.x, pulled.at.y)).toBeLessThanOrEqual(90);
  });

  it('counts only its own direction', () => {
    const pulled = pullHandle(grip("p: { label: P, part: plate, at: 'u, n', moves: [u], along: 0 deg }"), {
      x: 70,
      y: 500,
    });
    expect(pulled).toMatchObject({ reached: true, at: { x: expect.closeTo(70, 6), y: 60 } });
  });

  it('leaves alone what is fixed', () => {
    const held = grip("p: { label: P, part: plate, at: 'u + n, 0', moves: [u, n] }", {}, ['n']);
    expect(pullHandle(held, { x: 120, y: 0 })!.values).toMatchObject({ u: expect.closeTo(60, 6), n: 60 });
    const form = readOrThrow(text("p: { label: P, part: plate, at: 'u, 0', moves: [u] }"));
    expect(gripHandle(form, {}, 'p', ['u'])).toMatchObject({
      ok: false,
      problems: [{ code: 'handle.fixed' }],
    });
    expect(gripHandle(form, {}, 'q')).toMatchObject({ ok: false, problems: [{ code: 'handle.unknown' }] });
  });

  it('does not begin where a check fails already', () => {
    const checks = '- { needs: u > n, say: too small }';
    expect(
      pullHandle(grip("p: { label: P, part: plate, at: 'u, n', moves: [u] }", { checks }), { x: 55, y: 60 }),
    ).toBeUndefined();
  });

  it('settles in steps, the nearest of them that the form allows', () => {
    const held = grip("p: { label: P, part: plate, at: 'u, n', moves: [u, n] }", {
      checks: '- { needs: u <= 57.4 mm, say: too much }',
    });
    const target = { x: 80, y: 70.7 };
    const pulled = pullHandle(held, target)!;
    expect(pulled.values.u).toBeCloseTo(57.4, 6);
    const settled = settleHandle(held, pulled, target, { length: 1, angle: 0.01, ratio: 0.01 })!;
    expect(settled.values).toMatchObject({ u: 57, n: 71 });
    expect(settled.off).toBeCloseTo(Math.hypot(23, 0.3), 6);
  });
});
