import { type Finding, once } from '../../core/index.ts';
import type { DowelSize, LooseTenonSize, Wood } from '../../materials/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { PlacedPart, StandingBase } from '../api.ts';
import { type CutToSet, orderOfSettings, type SawRange, type SettingOrder } from '../end-cut/index.ts';
import type { Caul, GlueStep } from '../glue-up/api.ts';
import { caulsOf } from '../glue-up/cauls-of.ts';
import { glueFindings } from '../glue-up/glue-findings.ts';
import { glueSteps } from '../glue-up/glue-steps.ts';
import type { BaseJoints } from '../joints/api.ts';
import { joinBase } from '../joints/join-base.ts';
import type { KeptBase } from '../kept/keep-cut-parts.ts';
import type { MadePart } from '../made/api.ts';
import { partsToMake } from '../made/parts-to-make.ts';
import { type CutListLine, cutList, type RoughAllowance } from './cut-list.ts';
import { cutsOfPart, type PartCut } from './cuts-of-part.ts';
import { type ErrorsOfBase, errorsOfBase } from './errors-of-base.ts';
import type { StandingUp } from './standing.ts';

/** What a base is made of and with. */
export interface BuildOptions {
  readonly wood: Wood;
  /** By the form's name of the part, where it is of another wood. */
  readonly woods: Readonly<Record<string, Wood>>;
  readonly looseTenons?: readonly LooseTenonSize[];
  readonly dowels?: readonly DowelSize[];
  readonly saw: SawRange;
  /** Diameter of the cutter that clears pockets, mm. */
  readonly cutter: number;
  readonly allowance: RoughAllowance;
  readonly lengths: LengthStyle;
}

/** Everything that follows from a base form: what is made, how it is cut, joined and glued, and how it stands. */
export interface BuiltBase {
  readonly base: StandingBase;
  readonly joints: BaseJoints;
  readonly made: readonly MadePart[];
  /** By the name of the made part. */
  readonly cuts: readonly { readonly part: string; readonly cuts: readonly PartCut[] }[];
  /** Settings of the saw for all end cuts, in the order of fewest changes; identities as `part cut` or `part cut right`. */
  readonly order: SettingOrder;
  readonly list: readonly CutListLine[];
  readonly glue: readonly GlueStep[];
  readonly cauls: readonly Caul[];
  readonly errors: ErrorsOfBase;
  readonly standing?: StandingUp;
  readonly woodOf: Readonly<Record<string, string>>;
  readonly findings: readonly Finding[];
}

/** Builds a base whose parts stand (`placeBase`). Saw settings, cut list, cauls and errors are reckoned when first asked for. */
export function buildBase({ base, findings: kept }: KeptBase, options: BuildOptions): BuiltBase {
  const { looseTenons, dowels, cutter, lengths } = options;
  const joints = joinBase(base, {
    cutter,
    lengths,
    ...(looseTenons === undefined ? {} : { looseTenons }),
    ...(dowels === undefined ? {} : { dowels }),
  });
  const made = partsToMake(base, joints);
  const woodOf = (part: string): Wood => options.woods[part] ?? options.wood;
  const drawnNames = new Map(base.parts.map(({ id, drawn }) => [id, drawn.name]));
  const woodNames = Object.fromEntries(
    made.map((part) => [part.name, woodOf(drawnNames.get(part.members[0]!.part)!).name]),
  );
  const glue = glueSteps(base.parts, joints.joints);
  const cuts = once(() => made.map((part) => ({ part: part.name, cuts: cutsOfPart(part, options.saw) })));
  const order = once(() => orderOfSettings(settingsOf(made, cuts())));
  const list = once(() => cutList(made, (name) => woodNames[name]!, options.allowance));
  const cauls = once(() => caulsOf(glue));
  const errors = once(() => errorsOfBase(base, joints.joints));
  const built: BuiltBase = {
    base,
    joints,
    made,
    get cuts() {
      return cuts();
    },
    get order() {
      return order();
    },
    get list() {
      return list();
    },
    glue,
    get cauls() {
      return cauls();
    },
    get errors() {
      return errors();
    },
    woodOf: woodNames,
    findings: [
      ...missedCuts(base.parts, lengths),
      ...kept,
      ...joints.findings,
      ...glueFindings(glue, joints.joints, lengths),
    ],
  };
  return built;
}

/** Every end cut with the setting that it wants: of the first way the saw can make it, and of the other hand as well. */
function settingsOf(made: readonly MadePart[], cuts: BuiltBase['cuts']): readonly CutToSet[] {
  return cuts.flatMap(({ part, cuts: own }) => {
    const isHanded = made.find(({ name }) => name === part)!.sketch.quantity.right > 0;
    return own.flatMap(({ name, cut, ways, next, mirrored }): readonly CutToSet[] => {
      if (cut.kind !== 'end') return [];
      const first = next?.kind === 'turn' ? next.laid.setting : (ways[0]?.setting ?? cut.onBack.setting);
      const over =
        isHanded && mirrored !== undefined
          ? [{ id: `${part} ${name} right`, setting: mirrored.laid.setting }]
          : [];
      return [{ id: `${part} ${name}`, setting: first }, ...over];
    });
  });
}

/** Planes that the form cuts a part by and that leave some of its drawn end uncut. */
function missedCuts(parts: readonly PlacedPart[], lengths: LengthStyle): readonly Finding[] {
  return parts
    .filter(({ copy }) => copy === 0)
    .flatMap(({ label, drawn, cuts }) =>
      cuts
        .filter(({ meets }) => !meets)
        .map(
          ({ name, short }): Finding => ({
            code: 'base.cut-misses',
            severity: 'stop',
            part: drawn.name,
            edges: [],
            message: `${name} does not cut right through ${label}: its wood ends ${formatLength(short, lengths)} too soon.`,
            measured: { value: short, unit: 'mm' },
            limit: { value: 0, unit: 'mm' },
            cure: `Draw ${label} ${formatLength(short + 5, lengths)} longer at that end.`,
          }),
        ),
    );
}
