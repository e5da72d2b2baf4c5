import { countFindings } from '../findings-table.ts';
import { say, type Terminal } from '../terminal.ts';
import type { Made } from './make-design.ts';

/** Tells the maker what was written and what to print. */
export function sayMade(terminal: Terminal, path: string, made: Made): void {
  const { computed, folder, files, jobs, pinned, dropped, since, sameOutlines } = made;
  say(terminal, `${path} → ${folder}: ${files.length} file${files.length === 1 ? '' : 's'}.`);
  for (const job of jobs) {
    const { plan } = computed.patterns.find(({ pattern }) => pattern.name === job.pattern)!;
    const count = job.only?.length ?? plan.sheets.length;
    const sheets = `${count} sheet${count === 1 ? '' : 's'} of ${plan.paper.name}`;
    const names = job.only?.map(({ row, place }) => `row ${row}, sheet ${place}`).join('; ');
    say(terminal, `  ${job.file}: ${names === undefined ? sheets : `${sheets}: ${names}`}`);
    if (names === undefined) continue;
    say(
      terminal,
      sameOutlines.includes(job.pattern)
        ? '    outlines as before: only figures or words have changed'
        : '    the outline, or how it lies on the sheets, has changed',
    );
  }
  if (since && jobs.every(({ only }) => only === undefined)) say(terminal, '  No sheet has changed.');
  if (dropped.length > 0) say(terminal, `  no longer needed: ${dropped.join('; ')}`);
  say(
    terminal,
    `  ${countFindings(computed.findings)}${computed.findings.length > 0 ? ' (findings.txt)' : ''}`,
  );
  if (pinned) {
    say(terminal, `  The grid of the sheets is now pinned in ${path}: a later print fits this one.`);
  }
}

/** The same for a program to read. */
export function summaryOf({ computed, folder, files, jobs, pinned, dropped, sameOutlines }: Made): object {
  return {
    design: computed.design.name,
    folder,
    files,
    prints: jobs.map(({ pattern, file, only }) => ({
      pattern,
      file,
      ...(only ? { sheets: only, outline: sameOutlines.includes(pattern) ? 'same' : 'changed' } : {}),
    })),
    pinned,
    dropped,
    findings: computed.findings.length,
    stops: computed.findings.filter(({ severity }) => severity === 'stop').length,
  };
}
