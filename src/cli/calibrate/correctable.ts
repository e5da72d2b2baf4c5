import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import { readTextFile } from '../../design/files.ts';
import {
  readDesign,
  readWorkshop,
  type TypedPaper,
  usualPaper,
  type Workshop,
  writeDesign,
  writeWorkshop,
} from '../../design/index.ts';
import type { LengthUnit } from '../../measure/index.ts';
import { pathIn, type Terminal } from '../terminal.ts';

type Calibration = NonNullable<TypedPaper['calibration']>;

/** A file that keeps a printer's correction: a design, or a workshop. */
export interface Correctable {
  /** With the correction now in force. */
  readonly paper: TypedPaper;
  readonly unit: LengthUnit;
  /** The file's text with another correction. */
  readonly corrected: (calibration: Calibration) => string;
}

/** The file that a maker names, with the correction of its paper or of one of its printers. */
export function loadCorrectable(
  terminal: Terminal,
  path: string,
  printer: string | undefined,
): Result<Correctable> {
  const text = readTextFile(pathIn(terminal, path), path);
  if (!text.ok) return text;
  const workshop = readWorkshop(text.value, path);
  if (workshop.ok) return inWorkshop(workshop.value.workshop, path, printer);
  const another = workshop.problems.some(({ code }) => code === 'workshop.wrong-kind');
  if (!another) return workshop;
  const design = readDesign(text.value, path);
  if (!design.ok) return design;
  const { paper, units } = design.value.design;
  return ok({
    paper,
    unit: units.length,
    corrected: (calibration) => writeDesign({ ...design.value.design, paper: { ...paper, calibration } }),
  });
}

function inWorkshop(workshop: Workshop, path: string, name: string | undefined): Result<Correctable> {
  if (name === undefined) return fail(printerWanted(workshop, path));
  const known = workshop.printers.find((printer) => printer.name === name);
  const { calibration: _, ...paper } = workshop.paper ?? usualPaper(workshop.units.length);
  return ok({
    paper: known?.calibration ? { ...paper, calibration: known.calibration } : paper,
    unit: workshop.units.length,
    corrected: (calibration) => {
      const printer = { name, calibration };
      const printers = known
        ? workshop.printers.map((each) => (each === known ? printer : each))
        : [...workshop.printers, printer];
      return writeWorkshop({ ...workshop, printers });
    },
  });
}

function printerWanted({ printers }: Workshop, path: string): Problem {
  const names = printers.map(({ name }) => `"${name}"`).join(', ');
  const message = `A workshop may have several printers: say which one with --printer${names ? ` (there is ${names}; another name adds one)` : ''}.`;
  return { code: 'command.printer', message, file: path };
}
