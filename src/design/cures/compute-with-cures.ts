import { type FigureToSet, type Finding, fail, ok, type Problem, type Result } from '../../core/index.ts';
import { describeForm, type Form } from '../../sketch/index.ts';
import { type ComputeOptions, compute } from '../compute.ts';
import type { Computed } from '../computed.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign, valuesOfDesign } from '../form-of-design.ts';
import { namesBehind } from '../parameters-behind.ts';
import { applyFigure } from './apply-figure.ts';
import { endOfRange } from './end-of-range.ts';
import { findFigure } from './find-figure.ts';
import { keyOfFinding, keyOfProblem } from './key-of-finding.ts';
import { parametersToTry } from './parameters-to-try.ts';
import { isEasilyMade, toolToMake } from './tools-to-make.ts';

/** So often a design is computed anew in search of cures, for all that is wrong with it together. */
const MOST_TRIALS = 80;

/** What only solids tell. */
const WEIGHED: ReadonlySet<string> = new Set(['base.collision', 'base.falls', 'base.no-feet']);

/** Cautions that hang on figures of the form. Of grain, cutters and hands no figure takes them away. */
const CURED_CAUTIONS =
  /^(base\.(knees|feet)\.|base\.(sag|tips)$|joint\.(wall-thin|meets-other|short-grain)$)/;

/** What was found of a design with another figure: by key, and what of it stops or warns. */
type Outcome = {
  readonly ok: boolean;
  readonly keys: ReadonlySet<string>;
  readonly stops: ReadonlySet<string>;
  readonly warns: ReadonlySet<string>;
};

export interface CureOptions extends ComputeOptions {
  /** Look for figures against cautions too, where nothing stops the design. */
  readonly cautions?: boolean;
}
/** `standing`: with how the base weighs and stands. */
type Trial = (design: Design, standing?: boolean) => Outcome;

/**
 * As `compute`; beside every finding that says stop, every check of the form that fails and every figure out of its range stands a figure to set, where one alone would do: the
 * least change of what is decided of the fewest parts, found by computing again. Set, that finding is gone and no new stop has come. A design that
 * nothing stops costs no more than `compute`; another some dozens of times as much. If asked, cautions get theirs once nothing stops the design: then no new
 * caution may come either.
 */
export function computeWithCures(
  design: Design,
  { cautions = false, ...options }: CureOptions = {},
): Result<Computed> {
  const memo = options.memo ?? new Map();
  const computed = compute(design, { ...options, memo });
  const tried = new Map<string, Outcome>();
  const trial: Trial = (other, standing = true) => {
    const key = JSON.stringify([other.parameters, other.base, other.tooling.cutter, standing]);
    const known = tried.get(key);
    if (known !== undefined) return known;
    if (tried.size >= MOST_TRIALS) return NOTHING;
    const { solids } = options;
    const outcome = outcomeOf(
      compute(other, {
        memo,
        wanted: { patterns: [], standing },
        ...(solids === undefined ? {} : { solids }),
      }),
    );
    tried.set(key, outcome);
    return outcome;
  };
  if (!computed.ok) {
    return fail(
      ...computed.problems.map((problem) =>
        withFigure(problem, cureOfProblem(design, problem, computed.problems, trial)),
      ),
    );
  }
  const isStopped = computed.value.findings.some(({ severity }) => severity === 'stop');
  const isCured = ({ severity, code }: Finding): boolean =>
    severity === 'stop' || (cautions && !isStopped && severity === 'caution' && CURED_CAUTIONS.test(code));
  const findings = computed.value.findings.map((finding) =>
    isCured(finding) ? withFigure(finding, cureOfFinding(computed.value, finding, trial)) : finding,
  );
  return ok({ ...computed.value, findings });
}

const NOTHING: Outcome = { ok: false, keys: new Set(), stops: new Set(), warns: new Set() };

const keysOf = (findings: readonly Finding[], of: Finding['severity']): ReadonlySet<string> =>
  new Set(findings.filter(({ severity }) => severity === of).map(keyOfFinding));

function outcomeOf(computed: Result<Computed>): Outcome {
  if (!computed.ok) return { ...NOTHING, keys: new Set(computed.problems.map(keyOfProblem)) };
  const { findings } = computed.value;
  return {
    ok: true,
    keys: new Set(findings.map(keyOfFinding)),
    stops: keysOf(findings, 'stop'),
    warns: keysOf(findings, 'caution'),
  };
}

const withFigure = <T extends Finding | Problem>(about: T, set: FigureToSet | undefined): T =>
  set === undefined ? about : { ...about, set };

function cureOfFinding(computed: Computed, finding: Finding, trial: Trial): FigureToSet | undefined {
  // A part cut to other figures is cured by all of those, or by a new piece.
  if (finding.code.startsWith('base.cut-')) return undefined;
  const { design, sketch } = computed;
  const key = keyOfFinding(finding);
  const before = keysOf(computed.findings, 'stop');
  const warned = keysOf(computed.findings, 'caution');
  const isCaution = finding.severity === 'caution';
  const isWeighed = WEIGHED.has(finding.code) || (isCaution && finding.code.startsWith('base.'));
  const doesWith =
    (standing: boolean) =>
    (other: Design): boolean => {
      const outcome = trial(other, standing);
      if (!outcome.ok || ![...outcome.stops].every((each) => before.has(each))) return false;
      if (!isCaution) return !outcome.stops.has(key);
      return !outcome.keys.has(key) && [...outcome.warns].every((each) => warned.has(each));
    };
  const does = doesWith(true);
  const made = toolToMake(design, finding);
  const canBeMade = made !== undefined && does(applyFigure(design, made));
  if (canBeMade && isEasilyMade(finding)) return made;
  const form = formOfDesign(design);
  if (!form.ok) return undefined;
  const names = parametersToTry(form.value, sketch.parameters, partsConcerned(computed, finding)).map(
    ({ name }) => name,
  );
  const search = (enough: typeof does) => firstFigure(design, form.value, names, sketch.parameters, enough);
  // Most is told without weighing the base: that is asked of the figure found alone.
  const quick = isWeighed ? undefined : search(doesWith(false));
  if (quick !== undefined && does(applyFigure(design, quick))) return quick;
  const isSearchedOut = quick === undefined && !isWeighed;
  return (isSearchedOut ? undefined : search(does)) ?? (canBeMade ? made : undefined);
}

/** The part that a finding names, and both that are joined where it speaks of a joint. */
function partsConcerned({ sketch }: Computed, { part, joint }: Finding): readonly string[] {
  const { joints = [], places = [] } = sketch.base ?? {};
  const joined = joints
    .filter(({ name }) => joint?.split(' ').includes(name))
    .flatMap(({ between }) => between)
    .flatMap((place) => places.filter(({ name }) => name === place).map((each) => each.part));
  return [...(part === undefined ? [] : [part]), ...joined];
}

/** With the figure this problem is gone, and there is no other that was not there before. */
function cureOfProblem(
  design: Design,
  problem: Problem,
  all: readonly Problem[],
  trial: Trial,
): FigureToSet | undefined {
  const form = formOfDesign(design);
  if (!form.ok) return undefined;
  if (problem.code === 'parameter.range') return endOfRange(design, form.value, problem);
  if (problem.code !== 'form.check' || problem.expected === undefined) return undefined;
  const values = valuesOfDesign(design, form.value);
  if (!values.ok) return undefined;
  const key = keyOfProblem(problem);
  const before = new Set(all.map(keyOfProblem));
  const does = (other: Design): boolean => {
    const outcome = trial(other);
    if (outcome.ok) return outcome.stops.size === 0;
    return (
      outcome !== NOTHING && !outcome.keys.has(key) && [...outcome.keys].every((each) => before.has(each))
    );
  };
  const parameters = namesBehind(problem.expected, form.value).filter((name) =>
    Object.hasOwn(values.value, name),
  );
  return firstFigure(design, form.value, parameters, values.value, does);
}

function firstFigure(
  design: Design,
  form: Form,
  names: readonly string[],
  values: Computed['sketch']['parameters'],
  does: (other: Design) => boolean,
): FigureToSet | undefined {
  const { parameters } = describeForm(form);
  const { parameters: own = {}, length = {} } = design.measured;
  const measured = new Set([...Object.keys(own), ...Object.values(length).map(({ by }) => by)]);
  for (const name of names) {
    const parameter = parameters.find((each) => each.name === name);
    // What was measured on the wood is no longer to be decided.
    if (parameter === undefined || measured.has(name)) continue;
    const found = findFigure(design, parameter, values[name] ?? parameter.default, does);
    if (found !== undefined) return found;
  }
  return undefined;
}
