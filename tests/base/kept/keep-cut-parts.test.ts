import { describe, expect, test } from 'vitest';
import type { StandingBase } from '../../../src/base/index.ts';
import { keepCutParts } from '../../../src/base/kept/keep-cut-parts.ts';
import { vec, vec3 } from '../../../src/geometry/index.ts';
import { board, place, shaped, stand } from '../hand-made.ts';

const MM = { unit: 'mm', decimals: 1 } as const;

interface Figures {
  readonly height?: number;
  readonly thickness?: number;
  readonly width?: number;
  readonly foot?: number;
  readonly lean?: number;
}

/** Two legs 60 wide between floor and underside, and a rail that is cut by the faces of both. */
function base({
  height = 700,
  thickness = 40,
  width = 60,
  foot = width,
  lean = 0,
}: Figures = {}): StandingBase {
  const legs = shaped(
    'leg',
    [vec(0, -30), vec(foot, -30), vec(width, height + 30), vec(0, height + 30)],
    thickness,
  );
  return stand(
    [legs, board('rail', 80, 900, 20)],
    [
      place('leg', 'leg', {
        at: vec3(-300, 0, 0),
        along: vec3(Math.tan(lean), 0, 1),
        face: vec3(0, -1, 0),
        trims: [
          { plane: 'floor', otherSide: false },
          { plane: 'underside', otherSide: false },
        ],
        copies: [{ kind: 'mirror', across: 'left-right' }],
      }),
      place('rail', 'rail', {
        pin: vec(0, 450),
        at: vec3(0, 10, 600),
        along: vec3(1, 0, 0),
        trims: [
          { plane: 'left_leg', otherSide: true },
          { plane: 'right_leg', otherSide: true },
        ],
      }),
    ],
    {
      planes: {
        floor: { kind: 'through', through: vec3(0, 0, 0), facing: vec3(0, 0, -1) },
        underside: { kind: 'through', through: vec3(0, 0, height), facing: vec3(0, 0, 1) },
        left_leg: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: [] }, out: 0 },
        right_leg: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: ['left-right'] }, out: 0 },
      },
    },
  );
}

const cut = (part: string, now: Figures, then: Figures = {}) =>
  keepCutParts(base(now), new Map([[part, base(then)]]), MM);

describe('a part that is cut', () => {
  test('stays as it is, and nothing is said of it, while what it was cut to stands', () => {
    const { base: kept, findings } = cut('leg', {});
    expect(findings).toEqual([]);
    expect(kept.parts).toEqual(base().parts);
  });

  test('keeps its outline and its ends when the base grows, and ends short by as much: said once for both copies', () => {
    const { base: kept, findings } = cut('leg', { height: 706 });
    expect(findings).toMatchObject([
      {
        code: 'base.cut-too-short',
        severity: 'stop',
        part: 'leg',
        edges: ['underside'],
        measured: { value: expect.closeTo(6, 9) },
      },
    ]);
    expect(findings[0]!.message).toContain('6.0 mm short of underside');
    const [leg] = kept.parts;
    expect(leg!.face).toEqual(base().parts[0]!.face);
  });

  test('can be cut again when the base shrinks', () => {
    const { findings } = cut('leg', { height: 695 });
    expect(findings).toMatchObject([
      {
        code: 'base.cut-again',
        severity: 'caution',
        edges: ['underside'],
        measured: { value: expect.closeTo(5, 9) },
      },
    ]);
  });

  test('is short where its end runs askew to the one now wanted', () => {
    // Legs that lean 2° now were cut square: at one corner the end falls short.
    const lean = (2 * Math.PI) / 180;
    const { findings } = cut('leg', { lean });
    expect(findings.map(({ code }) => code)).toContain('base.cut-too-short');
  });

  test('is as thick as it was: the form’s new thickness is named beside it', () => {
    const { base: kept, findings } = cut('leg', { thickness: 45 });
    expect(findings).toMatchObject([{ code: 'base.cut-thickness', severity: 'caution', part: 'leg' }]);
    expect(findings[0]!.message).toMatch(/40\.0 mm thick.*45\.0 mm/);
    expect(kept.parts[0]!.drawn.thickness).toBe(40);
  });

  test('keeps edges that the form would now draw elsewhere', () => {
    const { findings } = cut('leg', { foot: 50 });
    const [said] = findings.filter(({ code }) => code === 'base.cut-shape');
    // At the floor, 30 of 760 from where the foot is drawn 10 narrower: nearly square to the edge.
    expect(said!.measured!.value).toBeCloseTo((10 * 730) / 760, 2);
  });

  test('ends short of a part that became narrower', () => {
    // The rail was cut between legs 60 wide; legs of 55 leave 5 more at each end.
    const { findings } = cut('rail', { width: 55 });
    expect(findings.map(({ code, edges, measured }) => [code, edges, measured!.value])).toEqual([
      ['base.cut-too-short', ['left_leg'], expect.closeTo(5, 9)],
      ['base.cut-too-short', ['right_leg'], expect.closeTo(5, 9)],
    ]);
  });

  test('that the base no longer has is left out', () => {
    const none = keepCutParts(base(), new Map([['brace', base()]]), MM);
    expect(none.findings).toEqual([]);
  });
});
