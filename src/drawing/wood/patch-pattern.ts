import { boundsOfRegions, norm, type Region, STAY, transformRegion, vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Patch, PatchTooling } from '../../wood/index.ts';
import type { CheckLength, Mark, Pattern, ToolFact } from '../api.ts';
import { createDrawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { writeExact } from '../layout/figures.ts';
import { narrowHead, polygon, stroke, strokes } from '../layout/strokes.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';

/** Template round its opening for the router's base to stand on, mm. */
const RIM = 90;

/** Beyond the opening its middle lines run on by so much, mm: they are laid on crossing lines drawn through the flaw. */
const CROSS = 30;

/**
 * One template for a patch at full size: the opening to cut in it, and within it the plug and the recess that come of it. It lies with
 * its length up the sheet; its middle lines are laid on lines drawn through the flaw, along the grain and across it.
 */
export function patchPattern(patch: Patch, tooling: PatchTooling, lengths: LengthStyle): Pattern {
  const level = { ...STAY, turn: Math.PI / 2 - patch.grain };
  const opening = transformRegion(patch.opening, level);
  const plug = patch.plug.map((region) => transformRegion(region, level));
  const recess = patch.recess.map((region) => transformRegion(region, level));
  const box = boundsOfRegions([opening]);
  const middle = vec((box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2);
  const drawing = createDrawing(2 * (box.maxY - box.minY) + 4 * RIM);
  const { minX, minY, maxX, maxY } = box;
  const corners = [
    vec(minX - RIM, minY - RIM),
    vec(maxX + RIM, minY - RIM),
    vec(maxX + RIM, maxY + RIM),
    vec(minX - RIM, maxY + RIM),
  ];
  drawing.draw([pathMark('thin', polygon(corners), true)]);
  drawing.draw(outlines('template', [opening]));
  drawing.draw(outlines('part', plug));
  // Where they fit one line serves for both.
  if (Math.abs(patch.gap) > 0.01) drawing.draw(outlines('as-routed', recess));
  const across = [vec(minX - CROSS, middle.y), vec(maxX + CROSS, middle.y)] as const;
  const along = [vec(middle.x, minY - CROSS), vec(middle.x, maxY + CROSS)] as const;
  drawing.draw([pathMark('joint', strokes(across)), pathMark('joint', strokes(along))]);
  const arrow = vec(maxX + RIM / 2, middle.y);
  drawing.draw([
    pathMark('grain', [stroke(vec(arrow.x, arrow.y - 25), vec(arrow.x, arrow.y + 25))]),
    narrowHead('grain', vec(arrow.x, arrow.y + 25), vec(0, 1)),
    narrowHead('grain', vec(arrow.x, arrow.y - 25), vec(0, -1)),
    textMark('grain', vec(arrow.x - 1.5, arrow.y), {
      height: 2.5,
      angle: Math.PI / 2,
      align: 'middle',
      role: 'grain',
    }),
  ]);
  const say = (mm: number): string => writeExact(mm, lengths);
  const title = `Template for a patch ${say(patch.length)} × ${say(patch.width)}`;
  const lines: readonly (readonly [string, 'semibold' | 'regular'])[] = [
    [title, 'semibold'],
    ['Cut the opening: the chain line with two dots', 'regular'],
    [
      `Recess: cutter ${say(tooling.cutter)}, bushing ${say(tooling.bushing)} with collar ${say(patch.collar)}`,
      'regular',
    ],
    [`Plug: the same cutter and bushing, collar off`, 'regular'],
  ];
  lines.forEach(([text, weight], i) => {
    drawing.draw([
      textMark(text, vec(minX - RIM + 8, maxY + RIM - 12 - 6 * i), {
        height: weight === 'semibold' ? 3.5 : 2.5,
        weight,
        role: 'dimension',
      }),
    ]);
  });
  letter(drawing, [
    textMark('opening', vec(minX - 4, middle.y + 12), { height: 2.5, angle: Math.PI / 2, role: 'template' }),
  ]);
  const marks = drawing.marks();
  const scene = { marks, box: boundsOfMarks(marks) };
  return {
    name: 'patch',
    title,
    view: 'template',
    mirrored: false,
    scene,
    withNotes: scene,
    toolFacts: facts(patch, tooling, say),
    keepOffSeams: [{ at: middle, clearance: norm(maxX - minX, maxY - minY) / 2 + 5 }],
    checks: checksOf(across, along),
  };
}

function outlines(role: 'template' | 'part' | 'as-routed', regions: readonly Region[]): readonly Mark[] {
  return regions.flatMap(({ outer, holes }) =>
    [outer, ...holes].map(({ edges }) => pathMark(role, edges, true)),
  );
}

type Ends = readonly [{ readonly x: number; readonly y: number }, { readonly x: number; readonly y: number }];

function checksOf(across: Ends, along: Ends): readonly CheckLength[] {
  return [along, across].map(([from, to], i) => ({
    name: i === 0 ? 'A' : 'B',
    from,
    to,
    nominal: norm(to.x - from.x, to.y - from.y),
  }));
}

function facts(patch: Patch, tooling: PatchTooling, say: (mm: number) => string): readonly ToolFact[] {
  const isFitting = patch.gap >= 0;
  return [
    { words: 'Cutter', figure: `Ø ${say(tooling.cutter)}` },
    { words: 'Bushing, outside', figure: `Ø ${say(tooling.bushing)}` },
    {
      words: 'Collar on it for the recess',
      figure: `Ø ${say(patch.collar)}`,
      ...(isFitting ? {} : { grave: true }),
    },
    { words: 'Room for glue all round', figure: say(Math.max(0, patch.gap)) },
  ];
}
