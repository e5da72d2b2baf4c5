import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/cli/program.ts';

/** A folder of its own for one test, with the program run in it. */
export interface Workbench {
  readonly folder: string;
  readonly path: (name: string) => string;
  readonly read: (name: string) => string;
  readonly json: (name: string) => ReturnType<typeof JSON.parse>;
  /** Runs one command line; what it wrote to both streams, and its exit code. */
  readonly run: (...args: readonly string[]) => Promise<Outcome>;
  readonly clear: () => void;
}

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export function openWorkbench(): Workbench {
  const folder = mkdtempSync(join(tmpdir(), 'legwright-cli-'));
  const path = (name: string): string => join(folder, name);
  const read = (name: string): string => readFileSync(path(name), 'utf8');
  return {
    folder,
    path,
    read,
    json: (name) => JSON.parse(read(name)),
    run: async (...args) => {
      let out = '';
      let err = '';
      const code = await run(args, {
        out: { write: (text) => (out += text), columns: 100 },
        err: { write: (text) => (err += text) },
        folder,
        today: '2026-03-09',
      });
      return { code, out, err };
    },
    clear: () => rmSync(folder, { recursive: true, force: true }),
  };
}
