import { patchesOfDesign } from '../../../design/index.ts';
import { loopsOf, patchPattern, type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import type { Region, Vec } from '../../../geometry/index.ts';
import { formatLength } from '../../../measure/index.ts';
import { type PatchPlace, type PatchPlaceFault, plugAt } from '../../../wood/index.ts';
import { type Answering, madeOf } from './answering.ts';
import { layoutInHand } from './layout.ts';

/** A patch of the design, ready for the screen. */
export interface ShownPatch {
  readonly name: string;
  /** In words: its size, the collar that fits, the room round the plug. */
  readonly sizes: { readonly size: string; readonly collar: string; readonly gap: string };
  /** The template's drawing: opening, plug, and the recess where it differs. */
  readonly scene: ScreenScene;
  readonly findings: readonly { readonly severity: string; readonly words: string }[];
  /** Absent where there is no board for it. */
  readonly on?: {
    readonly board: string;
    readonly place: PatchPlace;
    /** Outline of the plug where it lies, path data, mm of board, y down; and half its length. */
    readonly data: string;
    readonly reach: number;
    readonly faults: readonly PatchPlaceFault['kind'][];
  };
}

/** The patches of the design; of one that cannot be read what is wrong with it. */
export type PatchInHand = ShownPatch | { readonly name: string; readonly why: readonly string[] };

export function patches({ design, computed }: Answering, _: undefined): readonly PatchInHand[] | undefined {
  const layout = computed === undefined ? undefined : layoutInHand(computed);
  if (computed === undefined || layout === undefined) return undefined;
  const { lengths } = computed;
  return madeOf(computed, 'patches', () =>
    patchesOfDesign(design, layout).map(({ typed, resolved, placed, problems }): PatchInHand => {
      const { name } = typed;
      if (resolved === undefined || problems.length > 0)
        return { name, why: problems.map(({ message }) => message) };
      const { patch, tooling } = resolved;
      const say = (mm: number): string =>
        formatLength(mm, lengths.unit === 'mm' ? { unit: 'mm', decimals: 2 } : lengths);
      return {
        name,
        sizes: {
          size: `${say(patch.length)} × ${say(patch.width)}`,
          collar: say(patch.collarNeeded),
          gap: say(patch.gap),
        },
        scene: sceneForScreen(patchPattern(patch, tooling, lengths).scene),
        findings: patch.findings.map(({ severity, message, cure }) => ({
          severity,
          words: cure === undefined ? message : `${message} ${cure}`,
        })),
        ...(placed === undefined
          ? {}
          : {
              on: {
                board: placed.board,
                place: placed.place,
                data: dataOf(plugAt(patch, placed.place)),
                reach: patch.length / 2,
                faults: placed.faults.map(({ kind }) => kind),
              },
            }),
      };
    }),
  );
}

function dataOf(regions: readonly Region[]): string {
  const point = ({ x, y }: Vec): string => `${x.toFixed(3)} ${(-y).toFixed(3)}`;
  return loopsOf(regions)
    .map((loop) => `M${loop.map(point).join('L')}Z`)
    .join('');
}
