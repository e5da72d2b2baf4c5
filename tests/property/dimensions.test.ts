import { describe, expect, test } from 'vitest';
import { standBase } from '../../src/base/stand/stand-base.ts';
import { boxesOverlap, boxOfText, growBox } from '../../src/drawing/layout/oriented-box.ts';
import { basePicture } from '../../src/drawing/title/base-pictures.ts';
import { layPicture } from '../../src/drawing/title/picture.ts';
import { distance } from '../../src/geometry/index.ts';
import { describeForm, evaluateForm, type Form, type ParameterValue } from '../../src/sketch/index.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { BASE_FORMS } from '../forms/forms.ts';

/** How many settings of each form are drawn: LEGWRIGHT_FUZZ, or a few. */
const RUNS = Math.min(2000, Number(process.env.LEGWRIGHT_FUZZ ?? 6));
const SCALE = 1 / 20;
const MM = { unit: 'mm', decimals: 1 } as const;
/** Boxes that share less than this, mm, only touch. */
const TOUCH = 0.01;

function settingOf(form: Form, random: Random): Readonly<Record<string, ParameterValue>> {
  return Object.fromEntries(
    describeForm(form).parameters.flatMap((parameter): [string, ParameterValue][] => {
      if (parameter.kind === 'length' || parameter.kind === 'angle') {
        return [[parameter.name, parameter.least + (parameter.most - parameter.least) * random.next()]];
      }
      return [];
    }),
  );
}

describe.each(BASE_FORMS.map((form) => [form.name, form] as const))('dimensions of %s', (_, form) => {
  test('never stand on each other and never lie', { timeout: 1_200_000 }, () => {
    let drawn = 0;
    for (let run = 0; run < RUNS; run++) {
      const sketch = evaluateForm(form, settingOf(form, randomFrom((run + 1) * 7919)));
      if (!sketch.ok) continue;
      const base = standBase(sketch.value);
      if (!base.ok) throw new Error(base.problems[0]!.message);
      for (const side of ['front', 'left', 'plan'] as const) {
        const { laid } = layPicture(basePicture(base.value, side), SCALE, MM);
        drawn += laid.length;
        const texts = laid.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'text'));
        const boxes = texts.map((text) => growBox(boxOfText(text), -TOUCH));
        for (const [i, box] of boxes.entries()) {
          for (const [j, other] of boxes.slice(i + 1).entries()) {
            const names = `${side}: ${texts[i]!.text} on ${texts[i + 1 + j]!.text}`;
            expect(boxesOverlap(box, other), names).toBe(false);
          }
        }
        for (const { dimension, figure, marks } of laid) {
          if (dimension.kind !== 'length') continue;
          const witnesses = marks.filter((mark) => mark.kind === 'path' && mark.role === 'extension');
          if (witnesses.length !== 2) continue;
          // The outer ends of the witness lines stand as far apart as what is measured.
          const [a, b] = witnesses.map((mark) => (mark.kind === 'path' ? mark.edges[0]!.to : { x: 0, y: 0 }));
          expect(Math.abs(distance(a!, b!) / SCALE - Number.parseFloat(figure)), figure).toBeLessThan(0.06);
        }
      }
    }
    expect(drawn).toBeGreaterThan(0);
  });
});
