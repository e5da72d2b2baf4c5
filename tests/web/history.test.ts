import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/index.ts';
import { applyEdits, type Edit, inverseOf } from '../../src/web/state/history/edit.ts';
import {
  type Change,
  type Folded,
  foldLog,
  redoOf,
  startLog,
  undoOf,
} from '../../src/web/state/history/fold-log.ts';
import { sampleDesign } from '../design/sample-design.ts';

const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({
    path: fc.constantFrom(
      ['parameters', 'splay'],
      ['parameters', 'overall_height'],
      ['name'],
      ['measured', 'thickness', 'leg'],
    ),
    to: fc.string(),
  }),
  fc.record({ path: fc.constantFrom(['parameters', 'splay'], ['base'], ['patterns', 0]) }),
);

test('what takes edits back leaves the design as it was', () => {
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 6 }), (edits) => {
      const design = sampleDesign('splayed-leg', ['leg']);
      const after = applyEdits(design, edits);
      expect(applyEdits(after, inverseOf(design, edits))).toEqual(design);
    }),
  );
});

/** Does what a maker does, one thing after another: changes, takes back, makes again. */
function live(design: Design, deeds: readonly (Edit | 'undo' | 'redo')[]): readonly Change[] {
  const log: Change[] = [];
  let folded: Folded = startLog(design);
  for (const deed of deeds) {
    const line =
      deed === 'undo'
        ? undoOf(folded)
        : deed === 'redo'
          ? redoOf(folded)
          : ({ kind: 'change', words: 'a change', edits: [deed] } as const);
    if (line === undefined) continue;
    log.push({ ...line, key: String(log.length), time: '2026-03-09T10:00:00.000Z' });
    folded = foldLog(folded, log.slice(-1));
  }
  return log;
}

test('a log read again at any place gives what was there, and everything can be taken back to the beginning', () => {
  const deed = fc.oneof({ weight: 3, arbitrary: edit }, fc.constantFrom('undo', 'redo'));
  fc.assert(
    fc.property(fc.array(deed, { maxLength: 20 }), fc.nat(20), (deeds, at) => {
      const design = sampleDesign('splayed-leg', ['leg']);
      const log = live(design, deeds);
      const whole = foldLog(startLog(design), log);
      const twice = foldLog(foldLog(startLog(design), log.slice(0, at)), log.slice(at));
      expect(twice).toEqual(whole);
      let back = whole;
      for (let line = undoOf(back); line !== undefined; line = undoOf(back)) {
        back = foldLog(back, [{ ...line, key: 'back', time: '' }]);
      }
      expect(back.design).toEqual(design);
    }),
  );
});

test('of two tabs that take back the same change at once one does, and nothing is lost', () => {
  const design = sampleDesign('splayed-leg', ['leg']);
  const [change] = live(design, [{ path: ['name'], to: 'another' }]);
  const undo = undoOf(foldLog(startLog(design), [change!]))!;
  const folded = foldLog(startLog(design), [
    change!,
    { ...undo, key: '2', time: '' },
    { ...undo, key: '3', time: '' },
  ]);
  expect(folded.design).toEqual(design);
  expect(folded.undone).toHaveLength(1);
});
