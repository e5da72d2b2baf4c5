import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Result } from '../core/index.ts';
import { readTextFile } from '../design/files.ts';
import type { PrintFonts } from '../print/index.ts';
import { unpackWoff } from './unpack-woff.ts';

/** What comes with the program. Both src/cli/ and dist/cli/ lie two folders below it. */
export function packageFile(path: string): string {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}

/** Names of the forms that come with the program, in alphabetical order. */
export function formNames(): readonly string[] {
  return readdirSync(packageFile('templates'))
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -'.yaml'.length))
    .sort();
}

/** The text of a form that comes with the program. */
export function readFormText(name: string): Result<string> {
  return readTextFile(packageFile(`templates/${name}.yaml`), `${name}.yaml`);
}

/** The lettering's font files. */
export function readFonts(): PrintFonts {
  const face = (weight: string) => {
    return unpackWoff(readFileSync(packageFile(`shared/fonts/IBMPlexSansCondensed-${weight}.woff`)));
  };
  return { regular: face('Regular'), semibold: face('SemiBold') };
}

export function programVersion(): string {
  const { version } = JSON.parse(readFileSync(packageFile('package.json'), 'utf8')) as { version: string };
  return version;
}
