import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Outcome, openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;

async function begin(): Promise<void> {
  bench = openWorkbench();
  await bench.run('start', 'splayed-leg', '-o', 'desk.json', '--name', 'Desk');
}

const files = (folder: string): string[] =>
  readdirSync(bench.path(folder), { recursive: true })
    .map(String)
    .filter((name) => /\.\w+$/.test(name))
    .sort();

describe('the pack that make writes', () => {
  let made: Outcome;
  let before: unknown;
  beforeAll(async () => {
    await begin();
    before = bench.json('desk.json');
    made = await bench.run('make', 'desk.json', '-o', 'out');
  });
  afterAll(() => bench.clear());

  it('is whole, and pins the grid of the sheets in the design', () => {
    expect(made).toMatchObject({ code: 0, err: '' });
    expect(files('out')).toEqual([
      'cutting/leg-part.svg',
      'cutting/leg-template.svg',
      'drawings/leg-as-routed.svg',
      'drawings/leg-part.svg',
      'drawings/leg-template.svg',
      'drawings/leg.svg',
      'findings.txt',
      'leg.pdf',
      'result.json',
      'result.schema.json',
    ]);
    expect(made.out).toContain('pinned in desk.json');
    const after = bench.json('desk.json');
    expect(after.grids.leg).toHaveLength(1);
    expect({ ...after, grids: {} }).toEqual(before);
    expect(readdirSync(bench.folder).sort()).toEqual(['desk.json', 'out']);
  });

  it('has a result that its own JSON Schema accepts; another is refused', () => {
    const schema = z.fromJSONSchema(bench.json('out/result.schema.json'));
    const result = bench.json('out/result.json');
    expect(schema.safeParse(result).success).toBe(true);
    expect(schema.safeParse({ ...result, findings: [{ severity: 'fatal' }] }).success).toBe(false);
    expect(schema.safeParse({ ...result, extra: 1 }).success).toBe(false);
    expect(result.files.sort()).toEqual(files('out'));
  });

  it('carries each sheet back to the pattern: neighbours overlap by what the paper says', () => {
    const [{ sheets, paper }] = bench.json('out/result.json').patterns;
    // A4 less margins of 6.35 mm, kept clear for a correction of 1.5 % about the middle and 0.3 mm for lines, less the
    // strip of 11 mm at the foot and 12 mm of overlap.
    const content = (side: number) => (side / 2 - 6.35) * (2 / 1.015) - 0.6;
    const step = { across: content(paper.width) - 12, down: content(paper.height) - 11 - 12 };
    const cornerOf = (sheet: { toPattern: number[] }) => sheet.toPattern.slice(4) as [number, number];
    for (const [at, sheet] of sheets.entries()) {
      for (const other of sheets.slice(at + 1)) {
        const [a, b] = [cornerOf(sheet), cornerOf(other)];
        const across = (other.place - sheet.place) * step.across;
        const down = (other.row - sheet.row) * step.down;
        expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(Math.hypot(across, down), 6);
      }
    }
    expect(sheets.length).toBeGreaterThan(2);
  });

  it('has the same bytes when nothing has changed, and the design is left alone', async () => {
    const design = bench.read('desk.json');
    const pack = files('out').map((name) => bench.read(`out/${name}`));
    const again = await bench.run('make', 'desk.json', '-o', 'out');
    expect(again.out).not.toContain('pinned');
    expect(bench.read('desk.json')).toBe(design);
    expect(files('out').map((name) => bench.read(`out/${name}`))).toEqual(pack);
  });
});

describe('make', () => {
  beforeEach(begin);
  afterEach(() => bench.clear());

  it('with --since prints alone the sheets that changed', async () => {
    await bench.run('make', 'desk.json', '-o', 'out');
    const same = await bench.run('make', 'desk.json', '-o', 'out', '--since', 'out/result.json');
    expect(same.out).toContain('No sheet has changed.');
    expect(files('out')).not.toContain('leg-changed.pdf');

    // An earlier result in which one sheet was printed otherwise, and one sheet was there that is no more.
    const earlier = bench.json('out/result.json');
    const [pattern] = earlier.patterns;
    const { row, place } = pattern.sheets[1];
    pattern.sheets[1].digest = 'other';
    pattern.sheets.push({ ...pattern.sheets[1], row: 9, place: 9 });
    writeFileSync(bench.path('earlier.json'), JSON.stringify(earlier));
    const changed = await bench.run('make', 'desk.json', '-o', 'out', '--since', 'earlier.json');
    expect(changed.out).toContain(`leg-changed.pdf: 1 sheet of A4: row ${row}, sheet ${place}\n`);
    expect(changed.out).toContain('    the outline, or how it lies on the sheets, has changed\n');
    expect(changed.out).toContain('no longer needed: leg, row 9, sheet 9\n');
    expect(bench.read('out/leg-changed.pdf').match(/\/Type \/Page\b/g)).toHaveLength(1);

    // The same sheets with another print of figures alone.
    earlier.patterns[0].sheets.pop();
    writeFileSync(bench.path('earlier.json'), JSON.stringify(earlier));
    const figures = await bench.run('make', 'desk.json', '-o', 'out', '--since', 'earlier.json');
    expect(figures.out).toContain('    outlines as before: only figures or words have changed\n');

    // What was changed then is old now.
    await bench.run('make', 'desk.json', '-o', 'out');
    expect(files('out')).not.toContain('leg-changed.pdf');
  });

  it('with --sheet writes that sheet alone, on the grid of the whole', async () => {
    const trial = await bench.run('make', 'desk.json', '-o', 'trial', '--sheet', 'row 1, sheet 1');
    expect(trial.code).toBe(0);
    expect(files('trial')).toEqual(['leg-row-1-sheet-1.pdf']);
    const pinned = bench.json('desk.json').grids;
    await bench.run('make', 'desk.json', '-o', 'out');
    expect(bench.json('desk.json').grids).toEqual(pinned);
  });

  it.each([
    ['row 7, sheet 9', 'No pattern has a sheet "row 7, sheet 9"'],
    ['the second', 'expected its name as printed'],
  ])('refuses the sheet "%s"', async (sheet, words) => {
    const refused = await bench.run('make', 'desk.json', '-o', 'trial', '--sheet', sheet);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain(words);
    expect(existsSync(bench.path('trial'))).toBe(false);
  });

  it('takes other views, the other hand and another paper without changing the design’s own', async () => {
    const args = ['--view', 'part', 'template', '--mirrored', '--paper', 'letter'];
    const made = await bench.run('make', 'desk.json', '-o', 'out', ...args);
    expect(made.out).toMatch(/leg-template-mirrored\.pdf: \d+ sheets? of Letter/);
    expect(files('out').filter((name) => name.endsWith('.pdf'))).toEqual([
      'leg-part-mirrored.pdf',
      'leg-template-mirrored.pdf',
    ]);
    const design = bench.json('desk.json');
    expect(design.paper.size).toBe('A4');
    expect(design.patterns).toEqual([{ part: 'leg', view: 'all', mirrored: false }]);
    const [pattern] = bench.json('out/result.json').patterns;
    expect(pattern).toMatchObject({ mirrored: true, paper: { name: 'Letter' } });
  });

  it('turns the regions of a mirrored pattern over', async () => {
    await bench.run('make', 'desk.json', '-o', 'left', '--view', 'part');
    await bench.run('make', 'desk.json', '-o', 'right', '--view', 'part', '--mirrored');
    const xs = (folder: string): number[] => {
      const [pattern] = bench.json(`${folder}/result.json`).patterns;
      return pattern.regions.designed[0].outer.map((edge: { from: [number, number] }) => edge.from[0]);
    };
    expect(xs('right').sort()).toEqual(
      xs('left')
        .map((x) => 0 - x)
        .sort(),
    );
  });

  it('gives several designs a folder each, and goes on past one that cannot be used', async () => {
    await bench.run('start', 'straight-stretcher', '-o', 'rail.json');
    writeFileSync(bench.path('broken.json'), '{ "legwright": 1, }');
    const made = await bench.run('make', 'desk.json', 'broken.json', 'rail.json', '-o', 'out');
    expect(made.code).toBe(2);
    expect(made.err).toMatch(/^broken\.json:1:19: Found }/);
    expect(readdirSync(bench.path('out')).sort()).toEqual(['desk', 'rail']);
  });

  it('exits with 1 when a finding says stop, the pack written all the same', async () => {
    const design = bench.json('desk.json');
    design.tooling.cutter = { diameter: 12, cuttingLength: 5 };
    writeFileSync(bench.path('desk.json'), JSON.stringify(design));
    const made = await bench.run('make', 'desk.json', '-o', 'out');
    expect(made.code).toBe(1);
    expect(made.out).toMatch(/\d stop/);
    expect(bench.read('out/findings.txt')).toContain('stop');
  });

  it('will not write over the output of another design unless told to', async () => {
    await bench.run('make', 'desk.json', '-o', 'out');
    await bench.run('start', 'straight-stretcher', '-o', 'rail.json', '--name', 'Rail');
    const refused = await bench.run('make', 'rail.json', '-o', 'out');
    expect(refused).toMatchObject({ code: 2 });
    expect(refused.err).toContain('the output of another design, "Desk" (splayed-leg, desk.json)');
    expect(bench.json('out/result.json').design.name).toBe('Desk');
    expect((await bench.run('make', 'rail.json', '-o', 'out', '--force')).code).toBe(0);
    expect(bench.json('out/result.json').design.name).toBe('Rail');
  });

  it.each([
    ['another form', ['straight-stretcher', '--name', 'Desk']],
    ['another file of the same form', ['splayed-leg', '--name', 'Desk']],
  ])('tells designs of one name apart by %s', async (_, [form, ...name]) => {
    await bench.run('make', 'desk.json', '-o', 'out');
    await bench.run('start', form!, '-o', 'other.json', ...name);
    const refused = await bench.run('make', 'other.json', '-o', 'out');
    expect(refused).toMatchObject({ code: 2, err: expect.stringContaining('another design, "Desk" (') });
    expect(bench.json('out/result.json').design).toMatchObject({
      form: { name: 'splayed-leg' },
      file: 'desk.json',
    });

    const since = await bench.run('make', 'other.json', '-o', 'mine', '--since', 'out/result.json');
    expect(since).toMatchObject({ code: 2, err: expect.stringContaining('after --since is of another') });
    expect(existsSync(bench.path('mine'))).toBe(false);
  });

  it('refuses to compare with a result that has none of the patterns', async () => {
    await bench.run('make', 'desk.json', '-o', 'out', '--view', 'part');
    const args = ['--view', 'template', '--since', 'out/result.json'];
    const since = await bench.run('make', 'desk.json', '-o', 'two', ...args);
    expect(since.code).toBe(2);
    expect(since.err).toContain('has no pattern leg-template, only leg-part.');
    expect((await bench.run('make', 'desk.json', '-o', 'two', ...args, '--force')).code).toBe(0);
  });

  it('will not put two designs of one file name into one folder', async () => {
    mkdirSync(bench.path('b'));
    await bench.run('start', 'splayed-leg', '-o', 'b/desk.json', '--name', 'Desk');
    const made = await bench.run('make', 'desk.json', 'b/desk.json', '-o', 'out', '--view', 'part');
    expect(made.code).toBe(2);
    expect(made.err).toMatch(/^b\/desk\.json: Its output would go into out\/desk, as that of desk\.json/);
  });

  it('takes away sheets of patterns that are no longer wanted, and nothing that it did not write', async () => {
    await bench.run('make', 'desk.json', '-o', 'out', '--view', 'part', 'template');
    writeFileSync(bench.path('out/notes.txt'), 'the maker’s own');
    writeFileSync(bench.path('keep.txt'), 'outside');
    const result = bench.json('out/result.json');
    result.files.push('../keep.txt', 'notes', 'notes.txt');
    writeFileSync(bench.path('out/result.json'), JSON.stringify(result));
    await bench.run('make', 'desk.json', '-o', 'out', '--view', 'part');
    expect(files('out')).not.toContain('leg-template.pdf');
    expect(files('out')).toContain('leg-part.pdf');
    expect(existsSync(bench.path('out/notes.txt'))).toBe(true);
    expect(existsSync(bench.path('keep.txt'))).toBe(true);
  });

  it('never writes over the design itself', async () => {
    const design = bench.read('desk.json');
    mkdirSync(bench.path('same'));
    writeFileSync(bench.path('same/result.json'), design);
    const { code, err } = await bench.run('make', 'same/result.json', '-o', 'same', '--force');
    expect(code).toBe(2);
    expect(err).toContain('write over the design itself');
    expect(bench.read('same/result.json')).toBe(design);
  });

  it('changes nothing, neither pack nor design, when one file cannot be written', async () => {
    await bench.run('make', 'desk.json', '-o', 'out');
    const old = bench.read('out/result.json');
    await bench.run('set', 'desk.json', 'splay=9°', '--revise');
    const design = bench.read('desk.json');
    // A folder stands where a drawing belongs.
    mkdirSync(bench.path('out/drawings/leg-part-mirrored.svg'));
    const refused = await bench.run('make', 'desk.json', '-o', 'out', '--mirrored', '--force');
    expect(refused.code).toBe(3);
    expect(refused.err).toContain('Nothing has been changed');
    expect(bench.read('out/result.json')).toBe(old);
    expect(bench.read('desk.json')).toBe(design);
    expect(files('out')).not.toContain('leg-mirrored.pdf');
  });
});
