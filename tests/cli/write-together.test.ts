import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeTogether } from '../../src/cli/write-together.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'legwright-write-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const at = (name: string): string => join(folder, name);
const read = (name: string): string => readFileSync(at(name), 'utf8');

describe('files written together', () => {
  it('are all there afterwards, in folders made for them, and nothing else is', () => {
    const done = writeTogether([
      { path: at('a/b/one.txt'), content: 'one' },
      { path: at('two.bin'), content: new Uint8Array([0, 255]) },
    ]);
    expect(done.ok).toBe(true);
    expect(readdirSync(folder, { recursive: true }).sort()).toEqual(['a', 'a/b', 'a/b/one.txt', 'two.bin']);
    expect(read('a/b/one.txt')).toBe('one');
    expect([...readFileSync(at('two.bin'))]).toEqual([0, 255]);
  });

  it('leave everything as it was when one of them cannot be put in place', () => {
    writeFileSync(at('one.txt'), 'old');
    writeFileSync(at('gone.txt'), 'kept');
    mkdirSync(at('two.txt'));
    const done = writeTogether(
      [
        { path: at('new/zero.txt'), content: 'zero' },
        { path: at('one.txt'), content: 'new' },
        { path: at('two.txt'), content: 'a folder is in the way' },
      ],
      [at('gone.txt')],
    );
    expect(done.ok ? [] : done.problems).toMatchObject([{ code: 'write.refused', file: at('two.txt') }]);
    expect(readdirSync(folder).sort()).toEqual(['gone.txt', 'one.txt', 'two.txt']);
    expect(read('one.txt')).toBe('old');
    expect(read('gone.txt')).toBe('kept');
  });

  it('leave everything as it was when a folder cannot be made', () => {
    writeFileSync(at('plain'), 'a file, not a folder');
    const done = writeTogether([
      { path: at('one.txt'), content: 'one' },
      { path: at('plain/two.txt'), content: 'two' },
    ]);
    expect(done.ok).toBe(false);
    expect(readdirSync(folder)).toEqual(['plain']);
  });

  it('leave everything as it was when a file to be taken away is a folder', () => {
    mkdirSync(at('old'));
    writeFileSync(at('one.txt'), 'old');
    const done = writeTogether([{ path: at('one.txt'), content: 'new' }], [at('old')]);
    expect(done.ok).toBe(false);
    expect(read('one.txt')).toBe('old');
  });

  it('take away the files of an earlier run that no longer hold', () => {
    writeFileSync(at('old.pdf'), 'old');
    expect(
      writeTogether([{ path: at('new.pdf'), content: 'new' }], [at('old.pdf'), at('never.pdf')]).ok,
    ).toBe(true);
    expect(readdirSync(folder)).toEqual(['new.pdf']);
  });

  it('replace the file that a link leads to, not the link', () => {
    mkdirSync(at('kept'));
    writeFileSync(at('kept/design.json'), 'old');
    symlinkSync(at('kept/design.json'), at('design.json'));
    expect(writeTogether([{ path: at('design.json'), content: 'new' }]).ok).toBe(true);
    expect(read('kept/design.json')).toBe('new');
  });

  it('take away what a run that was killed left beside them, and only that', () => {
    // No process has a number this high: Linux allows 2^22 at most.
    writeFileSync(at('.one.txt.legwright-99999999-0.new'), 'half');
    writeFileSync(at(`.one.txt.legwright-${process.ppid}-0.new`), 'of a run that is alive');
    writeFileSync(at('.one.txt.swp'), 'of the maker’s editor');
    expect(writeTogether([{ path: at('one.txt'), content: 'one' }]).ok).toBe(true);
    expect(existsSync(at('.one.txt.legwright-99999999-0.new'))).toBe(false);
    expect(existsSync(at(`.one.txt.legwright-${process.ppid}-0.new`))).toBe(true);
    expect(existsSync(at('.one.txt.swp'))).toBe(true);
  });
});
