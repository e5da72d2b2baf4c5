import { fail, ok, type Result } from '../../../core/index.ts';
import {
  type Design,
  defaultParameters,
  formOfOwnShape,
  loopsOfRegion,
  type OwnShape,
  readOutlineSvg,
  startDesign,
  usualPaper,
  usualTooling,
  usualUnits,
} from '../../../design/index.ts';
import { areaOfRegions } from '../../../geometry/index.ts';
import { evaluateForm } from '../../../sketch/index.ts';

/** A design whose form is a shape drawn by hand. */
export function beginOwnShape({
  shape,
  unit,
  date,
}: {
  readonly shape: OwnShape;
  readonly unit: 'mm' | 'in';
  /** ISO 8601. */
  readonly date: string;
}): Result<Design> {
  const written = formOfOwnShape(shape);
  if (!written.ok) return written;
  const { form, text } = written.value;
  const drawn = evaluateForm(form, {});
  if (!drawn.ok) return drawn;
  return ok(
    startDesign({
      name: form.title,
      form,
      text,
      // As drawn: in inches too a figure rounded to what a rule shows would change the shape.
      parameters: defaultParameters(form, 'mm'),
      parts: ['shape'],
      date,
      units: usualUnits(unit),
      tooling: usualTooling(unit),
      paper: usualPaper(unit),
    }),
  );
}

/** The largest outline in an SVG file with its openings, as strokes, and what was passed over. */
export function strokesInSvg({ text, name }: { readonly text: string; readonly name: string }): Result<{
  readonly loops: OwnShape['loops'];
  readonly remarks: readonly string[];
}> {
  const read = readOutlineSvg(text, name);
  if (!read.ok) return read;
  const [largest] = read.value.regions.toSorted((a, b) => areaOfRegions([b]) - areaOfRegions([a]));
  if (largest === undefined)
    return fail({ code: 'outline.none', message: 'The drawing has no closed outline.' });
  return ok({ loops: loopsOfRegion(largest), remarks: read.value.remarks });
}
