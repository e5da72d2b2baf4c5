#!/usr/bin/env node
import { run } from './program.ts';
import { complain, EXIT, type Terminal } from './terminal.ts';

const terminal: Terminal = {
  out: process.stdout,
  err: process.stderr,
  folder: process.cwd(),
  today: today(new Date()),
};

// A reader that has seen enough (`legwright forms | head`) is no fault.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code !== 'EPIPE') throw cause;
});

try {
  process.exitCode = await run(process.argv.slice(2), terminal);
} catch (cause) {
  complain(terminal, 'A fault of this program, not of your design. Please report it with these lines:');
  complain(terminal, cause instanceof Error ? (cause.stack ?? cause.message) : String(cause));
  process.exitCode = EXIT.fault;
}

/** The maker's own calendar day. */
function today(now: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
