import { problems } from '../../engine/engine.ts';
import { change, design } from '../../state/current.ts';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

/** Bit, guide and template in hand. */
export function ToolFields() {
  const inHand = design.value;
  if (inHand === undefined) return null;
  const { tooling, units } = inHand;
  const { guide } = tooling;
  const said = words.routing;
  const set = (label: string, path: readonly string[], to: unknown): void =>
    change(label, [{ path: ['tooling', ...path], to }]);
  const field = (label: string, path: readonly string[], value: string | number) => (
    <MeasureField
      key={path.join('.')}
      label={label}
      kind="length"
      text={String(value)}
      unit={units.length}
      problem={problems.value.find((problem) => problem.path === `tooling.${path.join('.')}`)?.message}
      onChange={(to) => set(label, path, to)}
    />
  );
  return (
    <section aria-label={said.tools}>
      <h2>{said.tools}</h2>
      <label class="choice">
        {said.machine}
        <select
          value={tooling.machine}
          onChange={(event) => set(said.machine, ['machine'], event.currentTarget.value)}
        >
          {Object.entries(said.machines).map(([name, label]) => (
            <option key={name} value={name}>
              {label}
            </option>
          ))}
        </select>
      </label>
      {field(said.cutter, ['cutter', 'diameter'], tooling.cutter.diameter)}
      {field(said.cuttingLength, ['cutter', 'cuttingLength'], tooling.cutter.cuttingLength)}
      <label class="choice">
        {said.guide}
        <select
          value={guide.kind}
          onChange={(event) => set(said.guide, ['guide'], guideOf(event.currentTarget.value, tooling))}
        >
          {Object.entries(said.guides).map(([name, label]) => (
            <option key={name} value={name}>
              {label}
            </option>
          ))}
        </select>
      </label>
      {guide.kind === 'bearing' ? (
        <>
          {field(said.bearing, ['guide', 'diameter'], guide.diameter)}
          <label class="choice">
            {said.bearingAt}
            <select
              value={guide.at}
              onChange={(event) => set(said.bearingAt, ['guide', 'at'], event.currentTarget.value)}
            >
              {Object.entries(said.bearings).map(([name, label]) => (
                <option key={name} value={name}>
                  {label}
                </option>
              ))}
            </select>
          </label>
        </>
      ) : (
        <>
          {field(said.bushing, ['guide', 'outsideDiameter'], guide.outsideDiameter)}
          {field(said.barrel, ['guide', 'barrelLength'], guide.barrelLength)}
        </>
      )}
      {field(said.template, ['templateThickness'], tooling.templateThickness)}
      {field(said.runOn, ['runOn'], tooling.runOn)}
    </section>
  );
}

type Tooling = NonNullable<typeof design.value>['tooling'];

/** A guide of another kind that goes with the bit in hand: a bearing as large as it, or a usual bushing. */
function guideOf(kind: string, { cutter }: Tooling): Tooling['guide'] {
  return kind === 'bearing'
    ? { kind: 'bearing', diameter: cutter.diameter, at: 'shank' }
    : { kind: 'bushing', outsideDiameter: '17 mm', barrelLength: '5 mm' };
}
