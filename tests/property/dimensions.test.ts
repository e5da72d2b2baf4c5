import { describe, expect, test } from 'vitest';
import { joinBase, partsToMake, type StandingBase, standBase } from '../../src/base/index.ts';
import type { Mark, PathMark, TextMark } from '../../src/drawing/api.ts';
import type { LaidDimension } from '../../src/drawing/dimension/api.ts';
import { flattenEdge } from '../../src/drawing/layout/flatten.ts';
import { boxesOverlap, boxOfText, segmentMeetsBox } from '../../src/drawing/layout/oriented-box.ts';
import { basePicture } from '../../src/drawing/title/base-pictures.ts';
import { breaksOf } from '../../src/drawing/title/breaks-of.ts';
import { partPictures } from '../../src/drawing/title/part-pictures.ts';
import { type LaidPicture, layPicture, type Picture } from '../../src/drawing/title/picture.ts';
import {
  type Arc,
  angleOf,
  distance,
  dot,
  polar,
  subtract,
  sweepOf,
  type Vec,
} from '../../src/geometry/index.ts';
import type { LengthStyle } from '../../src/measure/index.ts';
import { describeForm, evaluateForm, type Form, type ParameterValue } from '../../src/sketch/index.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { BASE_FORMS } from '../forms/forms.ts';

/** Settings of base forms that are drawn in all. */
const RUNS = Math.max(200, Number(process.env.LEGWRIGHT_FUZZ ?? 0));
const SEED = Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 1);

function settingOf(form: Form, random: Random): Readonly<Record<string, ParameterValue>> {
  return Object.fromEntries(
    describeForm(form).parameters.map((parameter): [string, ParameterValue] => {
      switch (parameter.kind) {
        case 'choice':
          return [parameter.name, random.pick(Object.keys(parameter.options))];
        case 'yes-no':
          return [parameter.name, random.next() < 0.5];
        case 'count':
          return [parameter.name, random.whole(parameter.least, parameter.most)];
        default:
          // Near the default, so that most settings are accepted.
          return [
            parameter.name,
            parameter.default + (random.next() - 0.5) * 0.3 * (parameter.most - parameter.least),
          ];
      }
    }),
  );
}

/** A base at a random setting that its form accepts. */
function anyBase(form: Form, random: Random): StandingBase {
  for (let tries = 0; tries < 200; tries++) {
    const sketch = evaluateForm(form, settingOf(form, random));
    const stood = sketch.ok ? standBase(sketch.value) : undefined;
    if (stood?.ok) return stood.value;
  }
  throw new Error(`${form.name} accepts nothing`);
}

const isText = (mark: Mark): mark is TextMark => mark.kind === 'text';
const isPath = (mark: Mark): mark is PathMark => mark.kind === 'path';

/** What is wrong with how figures stand on the paper. */
function overlapsIn({ marks }: LaidPicture): readonly string[] {
  const texts = marks.filter(isText).map((mark) => ({ mark, box: boxOfText(mark) }));
  const wrong: string[] = [];
  for (const [i, { mark, box }] of texts.entries()) {
    for (const other of texts.slice(i + 1)) {
      if (boxesOverlap(box, other.box)) wrong.push(`${mark.text} on ${other.mark.text}`);
    }
    for (const line of marks.filter(isPath)) {
      const crosses = line.edges.some((edge) => {
        const points = flattenEdge(edge, 0.05);
        return points.slice(1).some((p, k) => segmentMeetsBox(points[k]!, p, box));
      });
      if (crosses) wrong.push(`${mark.text} on a line (${line.role})`);
    }
  }
  return wrong;
}

/** Lines of a dimension, read back from its marks alone. */
const straight = (marks: readonly Mark[], role: string) =>
  marks
    .filter(isPath)
    .filter((mark) => mark.role === role && mark.fill === undefined)
    .flatMap(({ edges }) => edges);

/** What a length's figure should say by its extension lines and its heads: mm on paper, square to the extension lines. */
function lengthOnPaper({ marks }: LaidDimension): number {
  const tips = headTips(marks);
  expect(tips).toHaveLength(2);
  const along = angleOf(subtract(tips[1]!, tips[0]!));
  for (const edge of straight(marks, 'extension')) {
    // Extension lines stand square to the dimension line and end at one of its heads.
    const way = subtract(edge.to, edge.from);
    expect(Math.abs(dot(way, polar(along)))).toBeLessThan(1e-6);
    const off = tips.map((tip) => Math.abs(dot(subtract(edge.from, tip), polar(along))));
    expect(Math.min(...off)).toBeLessThan(1e-6);
  }
  return distance(tips[0]!, tips[1]!);
}

/** The first corner of a filled head is its tip. */
const headTips = (marks: readonly Mark[]): readonly Vec[] =>
  marks
    .filter(isPath)
    .filter(({ fill }) => fill === 'solid')
    .map(({ edges }) => edges[0]!.from);

const figureOf = (text: string): number => Number(/-?\d+(\.\d+)?/.exec(text)![0]);

function expectTrue(laid: LaidDimension, scale: number): void {
  const text = laid.marks.find(isText)!;
  expect(text.text).toBe(laid.figure);
  const figure = figureOf(text.text);
  switch (laid.dimension.kind) {
    case 'length':
      expect(Math.abs(lengthOnPaper(laid) / scale + (laid.dimension.shortened ?? 0) - figure)).toBeLessThan(
        0.0051,
      );
      // Read from below or from the right.
      expect(text.angle).toBeGreaterThan(-Math.PI / 2 + 0.1);
      expect(text.angle).toBeLessThanOrEqual(Math.PI / 2 + 0.2);
      return;
    case 'angle': {
      const [a, b] = straight(laid.marks, 'extension');
      const turned = angleOf(subtract(b!.to, b!.from)) - angleOf(subtract(a!.to, a!.from));
      const degrees = ((((turned * 180) / Math.PI) % 360) + 360) % 360;
      expect(Math.abs(degrees - figure)).toBeLessThan(0.0051);
      const bow = straight(laid.marks, 'dimension').find((edge): edge is Arc => edge.kind === 'arc')!;
      expect(distance(bow.centre, a!.from)).toBeLessThan(1e-9);
      expect(sweepOf(bow)).toBeGreaterThan(turned - 1e-9);
      return;
    }
    case 'radius': {
      const tip = headTips(laid.marks)[0]!;
      const { centre } = laid.dimension;
      const onPaper = { x: centre.x * scale, y: centre.y * scale };
      expect(Math.abs(distance(tip, onPaper) / scale - figure)).toBeLessThan(0.0051);
      return;
    }
    default:
  }
}

/** Of two lengths that stand on one side and overlap, the longer stands farther out. */
function expectShortInside(laid: readonly LaidDimension[]): void {
  const lines = laid.flatMap(({ dimension, marks }) => {
    const [a, b] = headTips(marks);
    const upright =
      a !== undefined && b !== undefined && (Math.abs(a.x - b.x) < 1e-9 || Math.abs(a.y - b.y) < 1e-9);
    if (dimension.kind !== 'length' || dimension.side === undefined || !upright) return [];
    const isLevel = Math.abs(a.y - b.y) < 1e-9;
    const ends = (isLevel ? [a.x, b.x] : [a.y, b.y]).toSorted((p, q) => p - q) as [number, number];
    const away = { left: -a.x, right: a.x, above: a.y, below: -a.y }[dimension.side];
    return [{ side: dimension.side, ends, away, name: dimension.name }];
  });
  for (const inner of lines) {
    for (const outer of lines) {
      const contains =
        outer.side === inner.side &&
        outer.ends[0] <= inner.ends[0] + 1e-6 &&
        outer.ends[1] >= inner.ends[1] - 1e-6;
      const longer = outer.ends[1] - outer.ends[0] > inner.ends[1] - inner.ends[0] + 1e-6;
      if (contains && longer)
        expect(outer.away, `${outer.name} outside ${inner.name}`).toBeGreaterThan(inner.away + 5);
    }
  }
}

function expectSound(picture: Picture, scale: number, height: number): number {
  const lengths: LengthStyle = { unit: 'mm', decimals: 2 };
  const laid = layPicture(picture, scale, lengths, height);
  expect(overlapsIn(laid)).toEqual([]);
  for (const each of laid.laid) expectTrue(each, scale);
  expectShortInside(laid.laid);
  return laid.laid.length;
}

describe.each(BASE_FORMS.map((form) => [form.name, form] as const))('%s', (_, form) => {
  test('at any setting: figures stand on nothing, say what their lines measure, and short lengths stand inside long ones', {
    timeout: 300_000,
  }, () => {
    const random = randomFrom(SEED * 131 + form.name.length);
    let figures = 0;
    const runs = Math.ceil(RUNS / BASE_FORMS.length);
    for (let run = 0; run < runs; run++) {
      const base = anyBase(form, random);
      const scale = random.pick([1, 1 / 2, 1 / 5, 1 / 10, 1 / 20]);
      const side = random.pick(['front', 'left', 'right', 'plan'] as const);
      figures += expectSound(basePicture(base, side, { tolerance: 0.2 }), scale, random.pick([2.5, 2.5, 7]));
      if (run % 8 > 0) continue;
      const made = partsToMake(base, joinBase(base, { cutter: 12, lengths: { unit: 'mm', decimals: 1 } }));
      const part = random.pick(made);
      const placed = base.parts.find(({ id }) => id === part.members[0]!.part)!;
      for (const picture of partPictures(part, placed))
        figures += expectSound(picture, random.pick([1, 1 / 2, 1 / 5, 1 / 10]), 2.5);
      const views = partPictures(part, placed);
      const pieces = breaksOf(views, 1 / 2);
      for (const picture of views) {
        // Where the centre of an arc comes to lie is read back of upright pictures alone.
        const dimensions = picture.dimensions.filter(({ kind }) => kind !== 'radius');
        figures += expectSound({ ...picture, dimensions, lying: true }, 1 / 5, 2.5);
        if (pieces !== undefined) figures += expectSound({ ...picture, pieces }, 1 / 2, 2.5);
      }
    }
    expect(figures).toBeGreaterThan(3 * runs);
  });
});
