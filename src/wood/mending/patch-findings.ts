import type { Finding } from '../../core/index.ts';
import type { Patch, PatchTooling } from './api.ts';

/** mm: a gap of glue that shows (0.1 hides, 0.2 shows: makers' accounts). */
const SHOWS = 0.15;

/** Gaps are told apart from none down to this, mm. */
const NONE = 1e-6;

/** mm of bushing beyond the cutter all round: with less, chips jam between them (common practice). */
const CHIP_ROOM = 1;

/** What is to be said of a patch before anything is cut. */
export function patchFindings(
  patch: Omit<Patch, 'findings'>,
  tooling: PatchTooling,
  clearance: number,
): readonly Finding[] {
  const { gap, collar, collarNeeded, recess } = patch;
  const findings: Finding[] = [];
  const words = (mm: number) => `${Number(mm.toFixed(2))} mm`;
  const cure = `Use a collar of ${words(collarNeeded)}: the bushing and twice the cutter${clearance > 0 ? ', less the room for glue' : ''}.`;
  const measured = { value: gap, unit: 'mm' } as const;
  if (recess.length === 0) {
    const message = `A collar of ${words(collar)} does not enter the opening: nothing is cut.`;
    findings.push({ code: 'mending.no-recess', severity: 'stop', edges: [], message, cure });
  } else if (gap < -NONE) {
    const message = `With a collar of ${words(collar)} the plug comes out ${words(-gap)} larger than its recess all round.`;
    findings.push({ code: 'mending.plug-too-large', severity: 'stop', edges: [], message, measured, cure });
  } else if (gap - clearance > SHOWS) {
    const message = `With a collar of ${words(collar)} a gap of ${words(gap)} stays all round the plug: it will show.`;
    const limit = { value: clearance + SHOWS, unit: 'mm' } as const;
    findings.push({
      code: 'mending.gap-shows',
      severity: 'caution',
      edges: [],
      message,
      measured,
      limit,
      cure,
    });
  }
  const room = (tooling.bushing - tooling.cutter) / 2;
  if (room <= 0) {
    const message = `A cutter of ${words(tooling.cutter)} does not pass through a bushing of ${words(tooling.bushing)}.`;
    findings.push({ code: 'mending.cutter-too-large', severity: 'stop', edges: [], message });
  } else if (room < CHIP_ROOM) {
    const message = `Only ${words(room)} are left between cutter and bushing, its wall taken in: see that the cutter turns free, and clear chips often.`;
    findings.push({ code: 'mending.little-chip-room', severity: 'caution', edges: [], message });
  }
  return findings;
}

/** What to mind, in the order of work. */
export const PATCH_CAUTIONS: readonly string[] = [
  'Try both cuts in scrap first, and press a plug into its recess before the work is touched.',
  'One template, clamped or taped so that it cannot shift; the router runs until the bit has stopped, and is lifted only then.',
  'Recess first, collar on the bushing: cut inward from the middle, then along the edge with the collar pressed against the template.',
  'Plug second, collar off: keep the bushing against the template all the way round. Wander inwards spoils the plug; outwards does no harm.',
  'A plug is too small to be held by hand: cut it in an offcut that is clamped, not through it, and free it afterwards with a handsaw or bandsaw from the back.',
  'Cut the plug a little thicker than the recess is deep, its grain as the part’s; glue it with the grain running on, and plane it down when dry.',
  'Eyes, ears and breath protected; the maker of the router says how fast this bit may turn and how deep it may cut at once.',
];
