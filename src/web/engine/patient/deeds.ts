import type { FigureToSet, Finding, Result } from '../../../core/index.ts';
import {
  computeWithCures,
  type Design,
  type Driver,
  driversOf,
  type PictureOf,
  solveFigure,
  type WantedFigure,
} from '../../../design/index.ts';
import { keyOfFinding } from '../../state/key-of-finding.ts';
import { known } from '../known.ts';
import { layBoards } from './lay-boards.ts';
import { rest } from './rest.ts';
import { solidsHere } from './solids-here.ts';
import { studyCell, studyChoices, studyWall } from './study.ts';

interface Asked {
  readonly design: Design;
  readonly of: PictureOf;
}

/** The parameters that each figure of a picture follows, by the figure's name. */
function drivers({ design, of }: Asked): Readonly<Record<string, readonly Driver[]>> {
  return Object.fromEntries(driversOf(design, of, known));
}

/** What to type for a parameter so that a figure of a picture comes to what is wanted. */
function solve({
  design,
  wanted,
}: {
  readonly design: Design;
  readonly wanted: WantedFigure;
}): Result<string | number> {
  return solveFigure(design, wanted, known);
}

/** Figures that cure findings, by `keyOfFinding`, and problems, by their message. */
function cures(design: Design): Readonly<Record<string, FigureToSet>> {
  const computed = computeWithCures(design, { memo: known, wanted: { patterns: [], standing: false } });
  if (!computed.ok) {
    return Object.fromEntries(
      computed.problems.flatMap(({ message, set }) => (set === undefined ? [] : [[message, set] as const])),
    );
  }
  return figuresIn(computed.value.findings);
}

function figuresIn(findings: readonly Finding[]): Readonly<Record<string, FigureToSet>> {
  return Object.fromEntries(
    findings.flatMap((finding) =>
      finding.set === undefined ? [] : [[keyOfFinding(finding), finding.set] as const],
    ),
  );
}

/** The same against cautions, knees and standing among them: dozens of bases are weighed for it. */
async function cautionCures(design: Design): Promise<Readonly<Record<string, FigureToSet>>> {
  const solids = await solidsHere();
  const options = { memo: known, solids, cautions: true, wanted: { patterns: [] } } as const;
  const computed = computeWithCures(design, options);
  return computed.ok ? figuresIn(computed.value.findings) : {};
}

/** What takes long and is not waited for. */
export const PATIENT = {
  cautionCures,
  layBoards,
  drivers,
  solve,
  cures,
  rest,
  studyChoices,
  studyWall,
  studyCell,
};

export type PatientDeed = keyof typeof PATIENT;
export type PatientInput<D extends PatientDeed> = Parameters<(typeof PATIENT)[D]>[0];
export type PatientOutcome<D extends PatientDeed> = Awaited<ReturnType<(typeof PATIENT)[D]>>;

export interface ToPatient {
  readonly id: number;
  readonly deed: PatientDeed;
  readonly input: unknown;
}

export interface FromPatient {
  readonly id: number;
  /** How much of it is done, 0 to 1: more will follow. */
  readonly share?: number;
  readonly outcome?: unknown;
  readonly fault?: string;
}
