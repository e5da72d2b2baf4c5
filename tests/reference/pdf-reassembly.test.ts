import { beforeAll, describe, expect, test } from 'vitest';
import { LINE_STYLES, type LineRole } from '../../src/drawing/index.ts';
import { type Edge, transformEdge, transformPoint, type Vec } from '../../src/geometry/index.ts';
import type { PatternPrint, PrintOptions } from '../../src/print/api.ts';
import type { Page, PageItem } from '../../src/print/page/ink.ts';
import { patternPages } from '../../src/print/pattern-pages.ts';
import { writePdf } from '../../src/print/pdf/write-pdf.ts';
import { renderPatternPdf } from '../../src/print/render-pattern-pdf.ts';
import { markSeams } from '../../src/print/seam-marks.ts';
import { cornerOf } from '../../src/print/seams.ts';
import { layoutOf } from '../../src/print/sheets-of-plan.ts';
import { compareOutlines } from '../print/support/compare-outlines.ts';
import { FORM_NAMES, printsOfForm } from '../print/support/form-prints.ts';
import { archedStretcher, kneeLeg, leaningLeg, panelLeg } from '../print/support/patterns.ts';
import { FONTS, META, printOf } from '../print/support/prints.ts';
import { readPages } from '../print/support/read-pdf.ts';
import { reassemble } from '../print/support/reassemble.ts';

/**
 * An independent reader (pdfjs-dist) opens the bytes and is given nothing else: the sheets are laid together by their
 * printed marks, at the scale of their printed bars, and the part's edge that results is compared with the one computed.
 */
const WITHIN = 0.02;

/**
 * The part's edge, and whatever else the pattern draws with the same line, as computed: on the first sheet, mm about the
 * page's centre, where the reassembly begins.
 */
function computedEdge({ pattern, plan }: PatternPrint): Edge[] {
  const { toPage } = plan.sheets[0]!;
  const { width, height } = plan.page;
  const shift = { x: toPage.shift.x - width / 2, y: toPage.shift.y - height / 2 };
  return pattern.scene.marks.flatMap((mark) =>
    mark.kind === 'path' && mark.fill === undefined && isDrawnAsEdge(mark.role)
      ? mark.edges.map((edge) => transformEdge(edge, { ...toPage, shift }))
      : [],
  );
}

function isDrawnAsEdge(role: LineRole): boolean {
  const { width, dash, ink } = LINE_STYLES[role];
  const edge = LINE_STYLES.part;
  return width === edge.width && dash.join() === edge.dash.join() && ink === edge.ink;
}

async function compare(print: PatternPrint, bytes: Uint8Array) {
  const assembled = reassemble(await readPages(bytes));
  const { printedOff, computedMissing } = compareOutlines(assembled.edge, computedEdge(print));
  return { ...assembled, worst: Math.max(assembled.marksApart, printedOff, computedMissing) };
}

async function expectTrue(print: PatternPrint, options: PrintOptions = {}, meta = META): Promise<void> {
  const { worst, sheets } = await compare(print, await renderPatternPdf([print], meta, FONTS, options));
  expect(sheets).toBe(print.plan.sheets.length);
  expect(worst).toBeLessThan(WITHIN);
}

describe('sheets laid together by their marks show the part again', () => {
  test.each([
    ['a leaning leg', leaningLeg(), 'A4'],
    ['an arched stretcher', archedStretcher(), 'Letter'],
    ['a panel with a window', panelLeg(), 'A3'],
  ])('%s', async (_, pattern, paper) => expectTrue(printOf(pattern, paper)));

  describe.each(FORM_NAMES)('the form %s at its defaults', (name) => {
    let onA4: ReturnType<typeof printsOfForm>;
    beforeAll(() => {
      onA4 = printsOfForm(name, 'A4');
    });

    test('on A4', async () => {
      for (const print of onA4.prints) await expectTrue(print, {}, onA4.meta);
    });

    test('on Letter', async () => {
      const { prints, meta } = printsOfForm(name, 'Letter');
      for (const print of prints) await expectTrue(print, {}, meta);
    });

    test('on a turned grid, by a printer that is out in both directions', async () => {
      const pinned = {
        orientation: 'landscape',
        turn: (23 * Math.PI) / 180,
        shift: { x: 12.3, y: -456.7 },
      } as const;
      for (const { pattern } of onA4.prints) {
        await expectTrue(
          printOf(pattern, 'A4', { calibration: { long: 1.0043, short: 0.9968 } }, { pinned }),
        );
      }
    });
  });

  test('nothing is missed: there are forms to print', () => {
    expect(FORM_NAMES.length).toBeGreaterThan(0);
  });

  test('on a grid turned by 17.5 degrees', async () => {
    const pinned = {
      orientation: 'portrait',
      turn: (17.5 * Math.PI) / 180,
      shift: { x: 31.7, y: -655.2 },
    } as const;
    await expectTrue(printOf(kneeLeg(), 'A4', {}, { pinned }));
  });

  test.each(['portrait', 'landscape'] as const)(
    'on a printer that is out in both directions, held %s',
    async (orientation) => {
      const print = printOf(kneeLeg(), 'A4', { orientation, calibration: { long: 1.0043, short: 0.9968 } });
      await expectTrue(print);
    },
  );
});

describe('one mark 1 mm out of place', () => {
  test.each([
    ['along its seam', 1, 0],
    ['across its seam', 0, 1],
  ])('%s is found out', async (_, along, across) => {
    const print = printOf(kneeLeg(), 'A4');
    const pages = patternPages([print], META);
    const bytes = await writePdf(
      withMarkMoved(print, pages, along, across),
      { title: '', subject: '', date: META.date },
      FONTS,
    );
    const { worst } = await compare(print, bytes);
    expect(worst).toBeGreaterThan(0.2);
  });
});

/** The pages with the first mark of the last seam moved on one of its two sheets. */
function withMarkMoved(print: PatternPrint, pages: readonly Page[], along: number, across: number): Page[] {
  const { plan, pattern } = print;
  const seam = markSeams(plan, pattern).at(-1)!;
  const sheet = seam.sheets[1];
  const corner = cornerOf(plan, sheet);
  const { cell } = layoutOf(plan);
  const at: Vec = {
    x: seam.marks[0]!.at.x - corner.x + cell.minX,
    y: seam.marks[0]!.at.y - corner.y + cell.minY,
  };
  const shift = seam.kind === 'side' ? { x: across, y: along } : { x: along, y: across };
  const by = { turn: 0, scale: 1, mirrored: false, shift };
  const move = (item: PageItem): PageItem => {
    if (item.kind !== 'fill' || item.edges.length !== 3) return item;
    const isHere = item.edges.some(({ from }) => Math.hypot(from.x - at.x, from.y - at.y) < 1e-9);
    return isHere ? { ...item, edges: item.edges.map((edge) => transformEdge(edge, by)) } : item;
  };
  const changed = pages.map((page, i) =>
    i + 1 === sheet.page ? { ...page, items: page.items.map(move) } : page,
  );
  expect(transformPoint(at, by)).not.toEqual(at);
  return changed;
}
