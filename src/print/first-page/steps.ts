import type { Paper, SheetPlan } from '../api.ts';

/** The order of taping: rows first, then rows to each other. */
export function tapingSteps(plan: SheetPlan, calibration: Paper['calibration']): string[] {
  const rows = Array.from({ length: plan.rows }, (_, i) => i + 1).map((row) => ({
    row,
    places: plan.sheets.filter((sheet) => sheet.row === row).map((sheet) => sheet.place),
  }));
  const joined = rows.filter(({ places }) => places.length > 1);
  const steps = [
    `Print at 100\u00a0% (\u201cactual size\u201d), not fitted to the page, on ${plan.paper.name}. Let paper and board lie in one room for a day.`,
    `On every sheet both bars must read 100 mm or 4 in. Where a rule reads otherwise, type what it reads and print again${calibration.long === 1 && calibration.short === 1 ? '' : '; this print is corrected already'}.`,
  ];
  if (joined.length > 0) {
    steps.push(
      `Rows first. ${joined.map(({ row, places }) => `Row ${row}: sheets ${listed(places)}.`).join(' ')} Cut each sheet but the first along its left seam line, lay it on its neighbour so that the line runs on and the tips of marks with the same name meet, and tape against a straight edge.`,
    );
  }
  if (plan.rows > 1) {
    steps.push(
      `Then rows to each other, from the top: ${rows
        .slice(1)
        .map(({ row }) => `row ${row - 1} on row ${row}`)
        .join(', ')}. Cut the upper row along its lower seam line, lay it on the row below, tips to tips.`,
    );
  }
  steps.push(
    'Measure the check lengths and write them down. Glue down from the middle outwards, measure again, and set stretched paper right from the centre line by its ticks.',
    'Joints and ends that meet other parts are marked from the figures or from the part itself, never from paper alone.',
  );
  return steps;
}

function listed(places: readonly number[]): string {
  return places.length < 3 ? places.join(' and ') : `${places.slice(0, -1).join(', ')} and ${places.at(-1)}`;
}
