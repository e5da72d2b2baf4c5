import type { PatternPrint, PrintFonts, PrintMeta, PrintOptions } from './api.ts';
import { leaveOutCut } from './leave-out.ts';
import { patternPages } from './pattern-pages.ts';
import { writePdf } from './pdf/write-pdf.ts';

/**
 * Patterns on their sheets as one PDF: for each pattern a first page with its map, and its sheets; with `only`, those
 * sheets alone. The same input gives the same bytes.
 */
export function renderPatternPdf(
  prints: readonly PatternPrint[],
  meta: PrintMeta,
  fonts: PrintFonts,
  options: PrintOptions = {},
): Promise<Uint8Array> {
  const whole = prints.map((print) => ({ ...print, pattern: leaveOutCut(print.pattern, print.plan) }));
  const pages = patternPages(whole, meta, options);
  const names = prints.map(({ pattern }) => pattern.title).join(', ');
  return writePdf(
    pages,
    { title: `${meta.design}: ${names}`, subject: 'Full-size patterns', date: meta.date },
    fonts,
  );
}
