import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const config = createRequire(import.meta.url)('../../.dependency-cruiser.cjs');

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'legwright-import-rule-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

/** Names of the rules that a small tree of sources breaks. */
async function broken(sources: Record<string, string>): Promise<string[]> {
  for (const [name, text] of Object.entries(sources)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const { tsConfig: _, ...options } = config.options;
  const found = await cruise(['src'], {
    ...options,
    baseDir: folder,
    validate: true,
    ruleSet: { forbidden: config.forbidden },
  });
  if (typeof found.output === 'string') throw new Error('expected a report as data');
  return found.output.summary.violations.map((violation) => violation.rule.name).sort();
}

describe('the import rule', () => {
  it('lets a layer import the index of an earlier one', async () => {
    expect(
      await broken({
        'src/geometry/index.ts': 'export const a = 1;',
        'src/print/pdf.ts': "import { a } from '../geometry/index.ts';\nexport const b = a;",
      }),
    ).toEqual([]);
  });

  it('refuses an import upwards', async () => {
    expect(
      await broken({
        'src/print/index.ts': 'export const a = 1;',
        'src/geometry/area.ts': "import { a } from '../print/index.ts';\nexport const b = a;",
      }),
    ).toEqual(['geometry-imports-downwards']);
  });

  it('refuses a type imported upwards as well', async () => {
    expect(
      await broken({
        'src/design/index.ts': 'export type A = 1;',
        'src/sketch/form.ts': "import type { A } from '../design/index.ts';\nexport const b: A = 1;",
      }),
    ).toEqual(['sketch-imports-downwards']);
  });

  it("refuses a way past another layer's index", async () => {
    expect(
      await broken({
        'src/geometry/area.ts': 'export const a = 1;',
        'src/print/pdf.ts': "import { a } from '../geometry/area.ts';\nexport const b = a;",
      }),
    ).toEqual(['geometry-through-its-index']);
  });

  it('refuses a disk outside the command line and the one file module', async () => {
    const source = "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;";
    expect(
      await broken({ 'src/print/pdf.ts': source, 'src/cli/main.ts': source, 'src/design/files.ts': source }),
    ).toEqual(['node-only-in-cli-and-files']);
  });

  it('refuses a circle', async () => {
    expect(
      await broken({
        'src/core/a.ts': "import { b } from './b.ts';\nexport const a = () => b;",
        'src/core/b.ts': "import { a } from './a.ts';\nexport const b = () => a;",
      }),
    ).toContain('no-cycles');
  });
});
