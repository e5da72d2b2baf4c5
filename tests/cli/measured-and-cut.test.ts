import { beforeEach, describe, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeEach(async () => {
  bench = openWorkbench();
  await bench.run('start', 'bench-base', '-o', 'bench.json');
  return () => bench.clear();
});

describe('measured', () => {
  it('takes a measure, counts the revision up and says of every part whether it changes', async () => {
    const { code, out } = await bench.run('measured', 'bench.json', 'panel.thickness=29.4mm');
    expect(code).toBe(0);
    expect(out).toContain('bench.json: revision B, 2026-03-09.');
    expect(out).toMatch(/ {2}Panel leg: changes/);
    expect(out).toMatch(/ {2}Long rail: changes/);
    expect(bench.json('bench.json').measured).toEqual({ thickness: { panel: '29.4mm' } });
  });

  it('leaves parts alone that the measure does not reach', async () => {
    const { out } = await bench.run('measured', 'bench.json', 'rail_thickness=21.5');
    expect(out).toMatch(/Stretcher: stays as it is/);
    expect(out).toMatch(/Long rail: changes/);
  });

  it('takes a measure back, and the design is as it was but for its revision', async () => {
    const before = bench.json('bench.json');
    await bench.run('measured', 'bench.json', 'panel.thickness=29.4mm', 'top_thickness=30mm');
    const { code } = await bench.run('measured', 'bench.json', 'panel.thickness=-', 'top_thickness=-');
    expect(code).toBe(0);
    const { revision, ...rest } = bench.json('bench.json');
    const { revision: _, ...was } = before;
    expect(rest).toEqual(was);
    expect(revision.index).toBe('C');
  });

  it('refuses what the form does not know or allow, and keeps the design', async () => {
    const before = bench.read('bench.json');
    for (const [typed, told] of [
      ['wing.thickness=20', 'wing'],
      ['wing=20', 'wing'],
      ['panel.thickness=thick', 'thick'],
      ['top_thickness=200mm', 'top_thickness'],
    ] as const) {
      const { code, err } = await bench.run('measured', 'bench.json', typed);
      expect([code, err]).toEqual([2, expect.stringContaining(told)]);
    }
    expect(bench.read('bench.json')).toBe(before);
  });
});

describe('cut', () => {
  it('keeps the shape of parts that are cut, and says so whatever is measured later', async () => {
    const { code, out } = await bench.run('cut', 'bench.json', 'panel', 'rail');
    expect([code, out]).toEqual([0, 'bench.json: panel is cut at revision A; rail is cut at revision A.\n']);
    const measured = await bench.run('measured', 'bench.json', 'top_thickness=30mm');
    expect(measured.out).toMatch(/Panel leg: cut already/);
    expect(measured.out).toMatch(/Stretcher: (stays|changes)/);
    // The base grows by 4: the panels have become short, which is a stop.
    expect(measured.code).toBe(1);
    const check = await bench.run('check', 'bench.json', '--json');
    const codes = JSON.parse(check.out).map(({ code: each }: { code: string }) => each);
    expect(codes).toContain('base.cut-too-short');
  });

  it('remembers the revision that a part was cut at first', async () => {
    await bench.run('cut', 'bench.json', 'panel');
    await bench.run('set', 'bench.json', 'hollow=30mm');
    const { out } = await bench.run('cut', 'bench.json', 'panel');
    expect(out).toBe('bench.json: panel was cut at revision A already.\n');
    expect(bench.json('bench.json').cut.panel.revision).toBe('A');
  });

  it('is undone, and the design is as it was', async () => {
    const before = bench.read('bench.json');
    await bench.run('cut', 'bench.json', 'panel');
    const { out } = await bench.run('cut', 'bench.json', 'panel', '--undo');
    expect(out).toBe('bench.json: panel follows the form again.\n');
    expect(bench.read('bench.json')).toBe(before);
  });

  it('refuses parts that the form does not draw, and takes back only what is cut', async () => {
    const before = bench.read('bench.json');
    const part = await bench.run('cut', 'bench.json', 'wing');
    expect([part.code, part.err]).toEqual([2, expect.stringContaining('one of: panel, stretcher, rail')]);
    const undo = await bench.run('cut', 'bench.json', 'panel', '--undo');
    expect([undo.code, undo.err]).toEqual([2, expect.stringContaining('"panel" is not among the parts')]);
    expect(bench.read('bench.json')).toBe(before);
  });
});
