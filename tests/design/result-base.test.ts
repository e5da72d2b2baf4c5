import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolids } from '../../src/base/index.ts';
import {
  type Computed,
  compute,
  readResult,
  resultJsonSchema,
  resultOf,
  type WrittenResult,
  writeResult,
} from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

type Three = readonly [number, number, number];
type Placed = NonNullable<WrittenResult['base']>['placed'][number];

/** Forms whose joints between them are of every kind that a form offers, with parts of one and of two hands. */
const FORMS = ['raked-table', 'crossed-base', 'arched-trestle'] as const;

function computed(form: string, solids?: Awaited<ReturnType<typeof loadSolids>>): Computed {
  const design = sampleDesign(form, []);
  const found = compute(
    { ...design, patterns: [] },
    { wanted: { patterns: [] }, ...(solids === undefined ? {} : { solids }) },
  );
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
}

const results = new Map<string, { readonly written: WrittenResult; readonly of: Computed }>();
beforeAll(async () => {
  const solids = await loadSolids();
  for (const form of FORMS) {
    const of = computed(form, solids);
    results.set(form, { written: JSON.parse(writeResult(resultOf(of))), of });
  }
});

const dot = (a: Three, b: Three): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** A place of a piece's plane, in the world, by nothing but what is written. */
function inWorld({ frame }: Pick<Placed, 'frame'>, [x, y]: readonly [number, number], z: number): Three {
  const { origin } = frame;
  return [0, 1, 2].map(
    (k) => origin[k]! + x * frame.x[k]! + y * frame.y[k]! + z * frame.z[k]!,
  ) as unknown as Three;
}

const cornersOf = (piece: Placed): readonly Three[] =>
  [
    { regions: piece.face, z: 0 },
    { regions: piece.back, z: -piece.thickness },
  ].flatMap(({ regions, z }) =>
    regions.flatMap(({ outer }) => outer.map(({ from }) => inWorld(piece, from, z))),
  );

describe.each(FORMS)('the base of %s in a result', (form) => {
  const result = () => results.get(form)!;
  const base = () => result().written.base!;

  it('is read back as it was written', () => {
    const { of } = result();
    const text = writeResult(resultOf(of));
    const read = readResult(text, 'result.json');
    expect(read.ok ? [] : read.problems).toEqual([]);
    expect(read.ok && read.value).toEqual(JSON.parse(text));
  });

  it('stands on the floor and reaches to the top, by its frames and outlines alone', () => {
    const heights = base().placed.flatMap((piece) => cornersOf(piece).map(([, , z]) => z));
    expect(Math.min(...heights)).toBeCloseTo(base().levellers, 6);
    expect(Math.max(...heights)).toBeCloseTo(base().top.level, 6);
    for (const { frame } of base().placed) {
      const { x, y, z } = frame;
      expect([dot(x, x), dot(y, y), dot(z, z), dot(x, y), dot(y, z), dot(z, x)]).toEqual(
        [1, 1, 1, 0, 0, 0].map((each) => expect.closeTo(each, 8)),
      );
    }
  });

  it('has every piece in one part, and as many of each hand as the part says', () => {
    const { placed, made, cutList } = base();
    expect(made.flatMap(({ members }) => members).sort()).toEqual(placed.map(({ id }) => id).sort());
    for (const { name, quantity } of result().written.parts) {
      const own = placed.filter(({ part }) => part === name);
      const right = own.filter(({ hand }) => hand === 'right').length;
      expect({ left: own.length - right, right }).toEqual(quantity);
      expect(cutList.find(({ part }) => part === name)).toMatchObject({ count: own.length, hands: quantity });
    }
  });

  it('has the joints where both pieces have wood', () => {
    const { placed, joints } = base();
    for (const { id, between, contact } of joints) {
      if (contact === undefined) continue;
      expect(contact.area, id).toBeGreaterThan(1);
      for (const piece of between.map((each) => placed.find((one) => one.id === each)!)) {
        const from = contact.frame.origin.map((c, k) => c - piece.frame.origin[k]!) as unknown as Three;
        const depth = dot(from, piece.frame.z);
        expect(depth, `${id} in ${piece.id}`).toBeLessThan(0.01);
        expect(depth, `${id} in ${piece.id}`).toBeGreaterThan(-piece.thickness - 0.01);
      }
    }
  });

  it('names every cut of a part, an end with its angles and its four arrises', () => {
    for (const { part, cuts } of base().made) {
      const [line] = base().cutList.filter((each) => each.part === part);
      for (const { name, kind, mitre, bevel, arrises } of cuts) {
        if (kind !== 'end') continue;
        expect([name, typeof mitre, typeof bevel]).toEqual([name, 'number', 'number']);
        expect(arrises).toHaveLength(4);
        for (const { length } of arrises!) {
          expect(length).toBeGreaterThan(0);
          // In its blank a part may be longer than finished by what its bevels need.
          expect(length).toBeLessThan(line!.finished.length * 1.1);
        }
      }
    }
  });

  it('weighs and tips as the computation says', () => {
    const { standing } = base();
    const { measured, tipping } = result().of.base!.standing!;
    expect(standing!.mass).toBeCloseTo(measured.mass, 8);
    expect(standing!.tipping!.stands).toBe(true);
    const least = standing!.tipping!.lines.flatMap(({ kilograms }) => kilograms ?? []);
    expect(standing!.tipping!.kilograms).toBe(least.length === 0 ? undefined : Math.min(...least));
    expect(standing!.tipping!.lines).toHaveLength(tipping!.lines.length);
  });
});

describe('the joints of a base in a result', () => {
  it('say what goes in', () => {
    const raked = results.get('raked-table')!.written.base!.joints;
    expect(raked.length).toBe(8);
    for (const { kind, tenons } of raked) {
      expect(kind).toBe('loose-tenons');
      expect(tenons!.count).toBeGreaterThan(0);
      expect(tenons!.thickness).toBeGreaterThan(0);
    }
    const trestle = results.get('arched-trestle')!.written.base!.joints;
    for (const { kind, tenon, tenons } of trestle) {
      expect([kind, tenons]).toEqual(['mortise-and-tenon', undefined]);
      expect(tenon!.length).toBeGreaterThan(0);
    }
    const crossing = results.get('crossed-base')!.written.base!.joints.find(({ kind }) => kind === 'halved')!;
    expect(crossing).not.toHaveProperty('tenons');
    expect(crossing.glue.area).toBeGreaterThan(0);
  });
});

describe('a result without a base, or without solids', () => {
  it('has none of a form of one part', () => {
    expect(resultOf(computed('splayed-leg'))).not.toHaveProperty('base');
  });

  it('says nothing of how it stands where no solids were loaded', () => {
    const { base } = resultOf(computed('stool-base'));
    expect(base!.placed.length).toBeGreaterThan(0);
    expect(base).not.toHaveProperty('standing');
  });
});

describe('the JSON Schema of a result', () => {
  type Node = {
    readonly $ref?: string;
    readonly $defs?: Readonly<Record<string, Node>>;
    readonly description?: string;
    readonly properties?: Readonly<Record<string, Node>>;
    readonly required?: readonly string[];
  };

  it('tells of the base, which a result may lack, and every property that is written of it', () => {
    const schema = resultJsonSchema() as Node;
    const named = schema.properties!.base!;
    expect(schema.required).not.toContain('base');
    expect(named.description).toMatch(/\w/);
    const node = named.$ref === undefined ? named : schema.$defs![named.$ref.split('/').at(-1)!]!;
    const written = results.get('raked-table')!.written.base!;
    expect(Object.keys(node.properties!).sort()).toEqual(Object.keys(written).sort());
    expect(node.required).not.toContain('standing');
  });
});
