import { fail, ok, type Problem, type Result } from '../core/index.ts';
import type { JsonSource } from './json-source.ts';
import { resolveBoards } from './lay/resolve-boards.ts';
import { resolveBase } from './resolve-base.ts';
import { resolvePaper } from './resolve-paper.ts';
import { RANGES, readBlade, readCutter, readGuide } from './resolve-tooling.ts';
import { resolveWood } from './resolve-wood.ts';
import { placeProblems } from './schema-problems.ts';
import { measureReader } from './typed-measures.ts';
import { readVersioned } from './versioned-file.ts';
import { WORKSHOP_VERSION, type Workshop, workshopSchema } from './workshop-schema.ts';

/**
 * Reads a workshop file. Problems: those of `readVersioned`, codes beginning with `workshop.`; every length in it that
 * no design could use; `workshop.repeated-name` where two things of one list could not be told apart.
 */
export function readWorkshop(
  text: string,
  file: string,
): Result<{ readonly workshop: Workshop; readonly source: JsonSource }> {
  const read = readVersioned<Workshop>(text, file, {
    name: 'workshop',
    mark: 'legwright-workshop',
    version: WORKSHOP_VERSION,
    schema: workshopSchema,
  });
  if (!read.ok) return read;
  const { value: workshop, source } = read.value;
  const problems = [...repeatedNames(workshop), ...unusableSizes(workshop)];
  return problems.length > 0 ? fail(...placeProblems(source, problems)) : ok({ workshop, source });
}

/** A design takes a tool over by its name. */
function repeatedNames(workshop: Workshop): Problem[] {
  return (['cutters', 'guides', 'blades', 'printers'] as const).flatMap((list) => {
    const names = workshop[list].map(({ name }) => name);
    return names.flatMap((name, at) => {
      const first = names.indexOf(name);
      if (first === at) return [];
      const expected = 'another name';
      const message = `${list}: "${name}" is the name of number ${first + 1} and of number ${at + 1}, expected ${expected} for one of them.`;
      return [{ code: 'workshop.repeated-name', message, path: `${list}.${at}.name`, found: name, expected }];
    });
  });
}

function unusableSizes(workshop: Workshop): readonly Problem[] {
  const unit = workshop.units.length;
  const reader = measureReader(unit);
  for (const [at, cutter] of workshop.cutters.entries()) readCutter(cutter, `cutters.${at}`, reader);
  for (const [at, guide] of workshop.guides.entries()) readGuide(guide, `guides.${at}`, reader);
  for (const [at, blade] of workshop.blades.entries()) readBlade(blade, `blades.${at}`, reader);
  reader.length(workshop.templateThickness, 'templateThickness', RANGES.templateThickness);
  reader.length(workshop.runOn, 'runOn', RANGES.runOn);
  reader.length(workshop.sawAllowance, 'sawAllowance', RANGES.allowance);
  const paper = workshop.paper === undefined ? ok(undefined) : resolvePaper(workshop.paper, unit);
  const base = resolveBase(workshop);
  const { wood, units } = workshop;
  const typed = wood === undefined ? [] : [resolveWood({ wood, units }), resolveBoards({ wood, units })];
  const others = [paper, base, ...typed].flatMap((each) => (each.ok ? [] : each.problems));
  // Thicknesses of boards are read by both.
  const all = [...reader.problems, ...others];
  return all.filter((each, at) => all.findIndex(({ message }) => message === each.message) === at);
}
