import type { Result } from '../../../core/index.ts';
import {
  type Design,
  lookAtCell,
  type SmallSide,
  type StudyAxis,
  type StudyLook,
  studyAxes,
  studyGrid,
} from '../../../design/index.ts';
import { type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import { known } from '../known.ts';

/** What can be gone through in a design. */
export function studyChoices(design: Design): ReturnType<typeof studyAxes> {
  return studyAxes(design, known);
}

/** A wall of designs, without the designs themselves: what each changes. */
export function studyWall({
  design,
  axes,
}: {
  readonly design: Design;
  readonly axes: readonly StudyAxis[];
}): Result<{
  readonly scales: readonly { readonly label: string; readonly values: readonly string[] }[];
  readonly cells: readonly {
    readonly at: readonly number[];
    readonly parameters: Readonly<Record<string, string | number>>;
  }[];
}> {
  const grid = studyGrid(design, axes, known);
  if (!grid.ok) return grid;
  const { scales, cells } = grid.value;
  return {
    ok: true,
    value: {
      scales: scales.map(({ label, values }) => ({ label, values: values.map(({ typed }) => `${typed}`) })),
      cells: cells.map(({ at, parameters }) => ({ at, parameters })),
    },
  };
}

/** One design of the wall, looked at. */
export function studyCell({
  design,
  side,
  parameters,
}: {
  readonly design: Design;
  readonly side: SmallSide;
  readonly parameters: Readonly<Record<string, string | number>>;
}): CellSeen {
  const look = lookAtCell({ ...design, parameters: { ...design.parameters, ...parameters } }, side, known);
  return look.kind === 'made' ? { ...look, scene: sceneForScreen(look.scene) } : look;
}

export type CellSeen =
  | (Omit<Extract<StudyLook, { kind: 'made' }>, 'scene'> & { readonly scene: ScreenScene })
  | Extract<StudyLook, { kind: 'unusable' }>;
