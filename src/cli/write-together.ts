import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fail, ok, type Result } from '../core/index.ts';
import { systemCodeOf } from '../design/files.ts';

export interface FileToWrite {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes all the files, or changes nothing. Every content is first written whole beside its target and flushed; then each
 * is renamed into place in the order given, so that no moment shows half a file; when one cannot be, those before it
 * are put back as they were. `remove` are files of an earlier run that no longer hold.
 *
 * A process killed between two renames leaves whole files, some of them new; the next run takes away what the killed
 * one left beside them. Folders are made where they are missing. Problem: `write.refused`.
 */
export function writeTogether(files: readonly FileToWrite[], remove: readonly string[] = []): Result<void> {
  const undo: (() => void)[] = [];
  const finish: (() => void)[] = [];
  let current = '';
  try {
    const staged = files.map((file, index) => {
      current = file.path;
      const path = throughLinks(file.path);
      makeFolder(dirname(path), undo);
      sweepLeftovers(dirname(path));
      const fresh = besides(path, `${index}.new`);
      undo.push(() => rmSync(fresh, { force: true }));
      writeThrough(fresh, file.content);
      return { path, fresh, kept: besides(path, `${index}.old`) };
    });
    for (const { path, fresh, kept } of staged) {
      current = path;
      if (existsSync(path)) keep(path, kept, undo, finish);
      else undo.push(() => rmSync(path, { force: true }));
      renameSync(fresh, path);
    }
    for (const [index, path] of remove.entries()) {
      if (!existsSync(path)) continue;
      current = path;
      keep(path, besides(path, `${files.length + index}.old`), undo, finish);
      rmSync(path);
    }
  } catch (cause) {
    for (const step of undo.reverse()) step();
    const code = systemCodeOf(cause);
    if (code === undefined) throw cause;
    const message = `Cannot be written (${code}). Nothing has been changed.`;
    return fail({ code: 'write.refused', message, file: current });
  }
  for (const step of finish) step();
  return ok(undefined);
}

/** A second name for what stands at `path`, from which it is put back if the rest fails. */
function keep(path: string, kept: string, undo: (() => void)[], finish: (() => void)[]): void {
  if (!lstatSync(path).isFile()) {
    throw Object.assign(new Error(`not a file: ${path}`), { code: 'EISDIR', syscall: 'rename' });
  }
  try {
    linkSync(path, kept);
  } catch {
    // Some file systems know no second names.
    copyFileSync(path, kept);
  }
  undo.push(() => renameSync(kept, path));
  finish.push(() => rmSync(kept, { force: true }));
}

/** A maker may keep a design as a link to where it really lies: that is the file to replace. */
function throughLinks(path: string): string {
  return existsSync(path) ? realpathSync(path) : path;
}

function makeFolder(folder: string, undo: (() => void)[]): void {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder), undo);
  mkdirSync(folder);
  undo.push(() => rmdirSync(folder));
}

function writeThrough(path: string, content: string | Uint8Array): void {
  const handle = openSync(path, 'w');
  try {
    writeFileSync(handle, content);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function besides(path: string, ending: string): string {
  return join(dirname(path), `.${basename(path)}.legwright-${process.pid}-${ending}`);
}

/** Takes away what killed runs left in a folder; a run that is still alive keeps its own. */
function sweepLeftovers(folder: string): void {
  for (const name of readdirSync(folder)) {
    const pid = /^\..*\.legwright-(\d+)-\d+\.(?:new|old)$/.exec(name)?.[1];
    if (pid !== undefined && Number(pid) !== process.pid && !isAlive(Number(pid))) {
      rmSync(join(folder, name), { force: true });
    }
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return systemCodeOf(cause) === 'EPERM';
  }
}
