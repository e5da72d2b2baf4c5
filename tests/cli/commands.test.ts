import { existsSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeEach(() => {
  bench = openWorkbench();
});
afterEach(() => bench.clear());

const FORMS = [
  'arched-stretcher',
  'curved-leg',
  'knee-leg',
  'panel-leg',
  'splayed-leg',
  'straight-stretcher',
] as const;

/** In the order of the work, so that what one example writes the next can read. */
const COMMANDS = [
  'forms',
  'workshop',
  'start',
  'set',
  'check',
  'make',
  'calibrate',
  'renew',
  'offset',
] as const;

describe('forms', () => {
  it('lists every form, in a table no wider than the terminal', async () => {
    const { code, out, err } = await bench.run('forms');
    expect([code, err]).toEqual([0, '']);
    for (const form of FORMS) expect(out).toContain(form);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it.each(FORMS)('shows what %s asks, each with its range and a line of help', async (form) => {
    const { code, out } = await bench.run('forms', form);
    expect(code).toBe(0);
    expect(out).toMatch(/overall_height +\d+ mm +\d+ mm to \d+ mm/);
    const { out: json } = await bench.run('forms', form, '--json');
    for (const parameter of JSON.parse(json).parameters) {
      expect(out).toContain(parameter.name);
      expect(parameter.help).toMatch(/\w/);
    }
  });

  it('asks which form was meant when a name is mistyped', async () => {
    const { code, err } = await bench.run('forms', 'kneeleg');
    expect(code).toBe(2);
    expect(err).toBe('There is no form called "kneeleg": expected "knee-leg".\n');
  });

  it('reads a form of the maker’s own, and shows its faults where they stand', async () => {
    const text = readFileSync(new URL('../../templates/splayed-leg.yaml', import.meta.url), 'utf8');
    writeFileSync(bench.path('mine.yaml'), text.replace('tan(', 'tam('));
    const { code, err } = await bench.run('forms', 'mine.yaml');
    expect(code).toBe(2);
    expect(err).toMatch(/^mine\.yaml:\d+:\d+: /);
  });
});

describe('start', () => {
  it.each(FORMS)('begins a design of %s that can be checked at once', async (form) => {
    expect((await bench.run('start', form, '-o', 'a.json')).code).toBe(0);
    const { code, err } = await bench.run('check', 'a.json');
    expect(err).toBe('');
    expect(code).toBe(0);
  });

  it('keeps what was typed, in the units asked for', async () => {
    await bench.run(
      'start',
      'splayed-leg',
      '-o',
      'a.json',
      '--units',
      'in',
      '--set',
      'overall_height=29 1/2"',
      'rail=no',
    );
    const design = bench.json('a.json');
    expect(design.parameters).toMatchObject({ overall_height: '29 1/2"', rail: 'no' });
    expect(design.parameters.stock).toMatch(/^1 \d+\/\d+ in$/);
    expect(design.units).toEqual({ length: 'in', nearest: '1/32' });
    expect(design.paper.size).toBe('Letter');
    expect(design.revision).toEqual({ index: 'A', date: '2026-03-09' });
  });

  it('refuses a value beyond its range, and writes nothing', async () => {
    const { code, err } = await bench.run('start', 'splayed-leg', '-o', 'a.json', '--set', 'splay=85°');
    expect(code).toBe(2);
    expect(err).toContain('it can be from 0° to 20°');
    expect(existsSync(bench.path('a.json'))).toBe(false);
  });

  it('says which parameters a check of the form speaks of, in the maker’s unit', async () => {
    const args = ['--units', 'in', '--set', 'foot_width=4', 'knee_width=3 in'];
    const { code, err } = await bench.run('start', 'knee-leg', '-o', 'a.json', ...args);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^the foot, 4 in, must not be wider than the leg at the knee, 3 in; it depends on foot_width = 4, knee_width = 3 in \(asked by the form, knee-leg\.yaml:\d+:\d+\)$/m,
    );
    // The least height of the base is calculated: named are the parameters that it comes from.
    const low = await bench.run(
      'start',
      'knee-leg',
      '-o',
      'a.json',
      '--set',
      'overall_height=300 mm',
      'arm_depth=200 mm',
      'arm_end=100 mm',
    );
    expect(low.err).toMatch(/; it depends on overall_height = 300 mm, [^\n]*arm_depth = 200 mm \(asked/);
  });

  it('keeps a design that is there already, unless told to replace it', async () => {
    await bench.run('start', 'splayed-leg', '-o', 'a.json');
    const again = await bench.run('start', 'knee-leg', '-o', 'a.json');
    expect(again).toMatchObject({ code: 2, err: expect.stringContaining('a.json: There is a file') });
    expect(bench.json('a.json').form.name).toBe('splayed-leg');
    expect((await bench.run('start', 'knee-leg', '-o', 'a.json', '--force')).code).toBe(0);
    expect(bench.json('a.json').form.name).toBe('knee-leg');
  });

  it('copies tooling, paper and the printer’s correction from a workshop', async () => {
    writeFileSync(bench.path('shop.json'), JSON.stringify(WORKSHOP));
    const args = ['--workshop', 'shop.json', '--cutter', 'spiral 3/8', '--guide', 'bushing 20'];
    const { code, err } = await bench.run('start', 'splayed-leg', '-o', 'a.json', ...args);
    expect(err).toBe('');
    expect(code).toBe(0);
    const { tooling, paper, units } = bench.json('a.json');
    expect(units).toEqual({ length: 'mm', decimals: 1 });
    // A bare number in the workshop keeps the workshop's unit.
    expect(tooling.cutter).toEqual({ name: 'spiral 3/8', diameter: '3/8 in', cuttingLength: '40 mm' });
    expect(tooling.guide).toMatchObject({ kind: 'bushing', outsideDiameter: '20 mm' });
    expect(tooling.cutters).toHaveLength(2);
    expect(paper.calibration).toEqual({
      long: 1.002,
      short: 0.999,
      date: '2026-01-02',
      printer: 'studio laser',
    });
  });

  it('asks which tool was meant when its name is mistyped', async () => {
    writeFileSync(bench.path('shop.json'), JSON.stringify(WORKSHOP));
    const { code, err } = await bench.run(
      'start',
      'splayed-leg',
      '-o',
      'a.json',
      '--workshop',
      'shop.json',
      '--cutter',
      'spirul 3/8',
    );
    expect(code).toBe(2);
    expect(err).toContain('no cutter called "spirul 3/8": expected "spiral 3/8"');
  });

  it('shows a fault of the workshop file where it stands', async () => {
    writeFileSync(bench.path('shop.json'), JSON.stringify({ ...WORKSHOP, blade: [] }, null, 2));
    const { code, err } = await bench.run('start', 'splayed-leg', '-o', 'a.json', '--workshop', 'shop.json');
    expect(code).toBe(2);
    expect(err).toMatch(/^shop\.json:\d+:3: blade: found "blade", expected "blades"\.\n$/);
  });

  it.each([
    [{ runOn: '5e3' }, /^shop\.json:\d+:12: runOn: cannot read "5e3" as a length/],
    [{ sawAllowance: '900 mm' }, /^shop\.json:\d+:19: sawAllowance: 900 mm .* from 0 mm to 200 mm/],
    [
      { blades: [{ name: 'wide', width: 'wide' }] },
      /^shop\.json:\d+:\d+: blades\.0\.width: cannot read "wide"/,
    ],
    [
      { cutters: [12, 13].map((diameter) => ({ name: 'flush', diameter, cuttingLength: 40 })) },
      /^shop\.json:\d+:\d+: cutters: "flush" is the name of number 1 and of number 2/,
    ],
  ])('refuses a workshop that no design could use, naming its file: %j', async (change, words) => {
    writeFileSync(bench.path('shop.json'), JSON.stringify({ ...WORKSHOP, ...change }, null, 2));
    const { code, err } = await bench.run('start', 'splayed-leg', '-o', 'a.json', '--workshop', 'shop.json');
    expect(code).toBe(2);
    expect(err).toMatch(words);
    expect(existsSync(bench.path('a.json'))).toBe(false);
  });

  it.each([
    ['roll x', /^--paper: cannot read "x" as a length: .*expected a name such as A4.* or "roll 610 mm"/],
    ['A44', /^--paper: no paper is called "A44"; expected a name such as A4/],
    ['30 x 700', /^--paper: .* sides from 90 to 5080 mm are possible/],
  ])('refuses the paper "%s" by the name of the option', async (paper, words) => {
    const begun = await bench.run('start', 'splayed-leg', '-o', 'a.json', '--paper', paper);
    expect([begun.code, begun.err]).toEqual([2, expect.stringMatching(words)]);
    expect(existsSync(bench.path('a.json'))).toBe(false);
    await bench.run('start', 'splayed-leg', '-o', 'a.json');
    const made = await bench.run('make', 'a.json', '-o', 'out', '--paper', paper);
    expect([made.code, made.err]).toEqual([2, expect.stringMatching(words)]);
  });
});

const WORKSHOP = {
  'legwright-workshop': 1,
  units: { length: 'mm', decimals: 1 },
  machine: 'table',
  cutters: [
    { name: 'flush 12', diameter: 12, cuttingLength: 40 },
    { name: 'spiral 3/8', diameter: '3/8 in', cuttingLength: 40 },
  ],
  guides: [
    { name: 'bearing 12', kind: 'bearing', diameter: 12, at: 'tip' },
    { name: 'bushing 20', kind: 'bushing', outsideDiameter: 20, barrelLength: 5 },
  ],
  blades: [{ name: 'quarter inch', width: '1/4 in' }],
  templateThickness: 9,
  runOn: 40,
  sawAllowance: 2,
  printers: [{ name: 'studio laser', calibration: { long: 1.002, short: 0.999, date: '2026-01-02' } }],
};

describe('workshop', () => {
  it.each(['mm', 'in'])('writes a file in %s that a design can begin from at once', async (units) => {
    expect((await bench.run('workshop', '-o', 'shop.json', '--units', units)).code).toBe(0);
    const { code, err } = await bench.run('start', 'knee-leg', '-o', 'a.json', '--workshop', 'shop.json');
    expect([code, err]).toEqual([0, '']);
    expect(bench.json('a.json').tooling.cutters).toHaveLength(2);
    expect((await bench.run('check', 'a.json')).code).toBe(0);
  });

  it('never writes over a workshop', async () => {
    writeFileSync(bench.path('shop.json'), 'mine');
    expect((await bench.run('workshop', '-o', 'shop.json')).code).toBe(2);
    expect(bench.read('shop.json')).toBe('mine');
  });
});

describe('set', () => {
  beforeEach(() => bench.run('start', 'splayed-leg', '-o', 'a.json', '--set', 'splay=6°', 'stock=38 mm'));

  it('changes parameters, and counts the revision up when asked', async () => {
    const { code, out } = await bench.run('set', 'a.json', 'splay=7.5°', 'stock=1 1/2"', '--revise');
    expect(code).toBe(0);
    expect(out).toBe('splay: 6° → 7.5°\nstock: 38 mm → 1 1/2"\nrevision B, 2026-03-09\n');
    expect(bench.json('a.json').parameters).toMatchObject({ splay: '7.5°', stock: '1 1/2"' });
  });

  it.each([
    [['splay=85°'], 'Splay is 85°: it can be from 0° to 20°'],
    [['splai=8°'], 'a.json: there is no parameter "splai": did you mean "splay"?\n'],
    [['nosuch=3'], 'a.json: there is no parameter "nosuch"; expected one of: overall_height, top_thickness,'],
    [['splay'], 'Found "splay", expected name=value'],
    [['splay=8°', 'splay=9°'], 'expected splay once'],
    [
      ['stock=thick'],
      'a.json: Stock thickness (stock): cannot read "thick" as a length: a number is missing; expected a length',
    ],
  ])('refuses %j and leaves the design alone', async (texts, words) => {
    const before = bench.read('a.json');
    const { code, err } = await bench.run('set', 'a.json', ...texts);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(bench.read('a.json')).toBe(before);
  });
});

describe('check', () => {
  it('prints findings as a table, and as JSON', async () => {
    await bench.run('start', 'knee-leg', '-o', 'a.json');
    const table = await bench.run('check', 'a.json');
    expect(table.out).toMatch(/^severity +part +where/);
    expect(table.out).toMatch(/a\.json: .*\d+ notes?\.\n$/);
    const findings = JSON.parse((await bench.run('check', 'a.json', '--json')).out);
    expect(findings[0]).toMatchObject({ code: expect.stringMatching(/^[a-z.-]+$/), part: 'leg' });
    expect(table.out.split('\n').filter((line) => /^(stop|caution|note) /.test(line))).toHaveLength(
      findings.length,
    );
  });

  it('exits with 1 on a stop', async () => {
    await bench.run('start', 'splayed-leg', '-o', 'a.json');
    const design = bench.json('a.json');
    design.tooling.cutter.cuttingLength = '5 mm';
    writeFileSync(bench.path('a.json'), JSON.stringify(design));
    expect(await bench.run('check', 'a.json')).toMatchObject({
      code: 1,
      out: expect.stringMatching(/^stop/m),
    });
    expect((await bench.run('check', 'a.json', '--json')).code).toBe(1);
  });

  it.each([
    ['nowhere.json', undefined, /^nowhere\.json: There is no such file\.\n$/],
    ['a.json', '{"legwright": 1', /^a\.json:1:16: The file ends too soon: .* Found the end of the file/],
    ['a.json', '{"legwright": 9}', /^a\.json:1:15: The design was written by a newer Legwright/],
    ['a.json', Buffer.from([0xff, 0xfe, 0x00]), /^a\.json: The file is not text in UTF-8\.\n$/],
  ])('exits with 2 and says why %s cannot be used', async (file, content, words) => {
    if (content !== undefined) writeFileSync(bench.path(file), content);
    const { code, out, err } = await bench.run('check', file);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(words);
  });

  it('shows a value that cannot be used where it stands in the design', async () => {
    await bench.run('start', 'splayed-leg', '-o', 'a.json', '--set', 'splay=6°');
    writeFileSync(bench.path('a.json'), bench.read('a.json').replace('"splay": "6°"', '"splay": "85°"'));
    const line =
      bench
        .read('a.json')
        .split('\n')
        .findIndex((each) => each.includes('"85°"')) + 1;
    const { code, err } = await bench.run('check', 'a.json');
    expect(code).toBe(2);
    expect(err).toMatch(new RegExp(`^a\\.json:${line}:14: Splay is 85°`));
  });
});

describe('renew', () => {
  it('finds nothing to do while the form is the same', async () => {
    await bench.run('start', 'splayed-leg', '-o', 'a.json');
    const before = bench.read('a.json');
    const { code, out } = await bench.run('renew', 'a.json', '--yes');
    expect([code, out]).toEqual([0, 'a.json has this very form already: nothing changes.\n']);
    expect(bench.read('a.json')).toBe(before);
  });

  it('lists what a newer form changes, and takes it over only when asked', async () => {
    await bench.run('start', 'splayed-leg', '-o', 'a.json');
    const before = bench.read('a.json');
    const text = readFileSync(new URL('../../templates/splayed-leg.yaml', import.meta.url), 'utf8');
    const newer = text
      .replace(/^version: 2$/m, 'version: 3')
      .replace(
        /^( *)pairs:/m,
        '$1spare: { label: Spare, kind: length, default: 4 mm, least: 0 mm, most: 9 mm, help: Room. }\n$1pairs:',
      )
      .replace('overall_height - top_thickness', 'overall_height - top_thickness - spare');
    writeFileSync(bench.path('newer.yaml'), newer);
    const shown = await bench.run('renew', 'a.json', '--form', 'newer.yaml');
    expect(shown.err).toBe('');
    expect(shown.out).toContain('splayed-leg version 2 → splayed-leg version 3');
    expect(shown.out).toMatch(/parameters +spare: Spare +– +4 mm/);
    expect(shown.out).toMatch(/leg +Outline +[\d.]+ cm² differ/);
    expect(bench.read('a.json')).toBe(before);

    expect((await bench.run('renew', 'a.json', '--form', 'newer.yaml', '--yes')).code).toBe(0);
    const after = bench.json('a.json');
    expect(after.form.version).toBe(3);
    expect(after.parameters).toEqual({ ...JSON.parse(before).parameters, spare: '4 mm' });
    expect(after.revision.index).toBe('B');
  });
});

describe('calibrate', () => {
  beforeEach(() => bench.run('start', 'splayed-leg', '-o', 'a.json'));

  it('writes the sheet with the bars', async () => {
    const { code } = await bench.run('calibrate', 'a.json', '-o', 'bars.pdf');
    expect(code).toBe(0);
    expect(bench.read('bars.pdf').startsWith('%PDF-1.7')).toBe(true);
  });

  it('corrects each edge by itself: nominal by measured', async () => {
    // A4 has room for bars of 260 and 170 mm beside each other; the sheet says so.
    const { code, out } = await bench.run('calibrate', 'a.json', '--long', '259.2 mm', '--printer', 'studio');
    expect(code).toBe(0);
    expect(out).toContain(`long edge × 1.00000 → × ${(260 / 259.2).toFixed(5)}, short edge × 1.00000.`);
    expect(bench.json('a.json').paper.calibration).toEqual({
      long: 260 / 259.2,
      short: 1,
      date: '2026-03-09',
      printer: 'studio',
      readings: { long: 259.2 },
    });
    // Measured again on a corrected sheet, the new factor multiplies the old.
    await bench.run('calibrate', 'a.json', '--long', '260.1 mm');
    expect(bench.json('a.json').paper.calibration.long).toBeCloseTo((260 / 259.2) * (260 / 260.1), 12);
  });

  it('takes a reading in inches for the bar in inches', async () => {
    await bench.run('calibrate', 'a.json', '--long', '10 1/64 in');
    expect(bench.json('a.json').paper.calibration.long).toBeCloseTo(10 / (10 + 1 / 64), 12);
  });

  it('takes a reading near 100 mm or 4 in for the bar that stands on every sheet of a pattern', async () => {
    await bench.run('calibrate', 'a.json', '--long', '99.7', '--short', '4 1/128 in');
    const { long, short } = bench.json('a.json').paper.calibration;
    expect(long).toBeCloseTo(100 / 99.7, 12);
    expect(short).toBeCloseTo(4 / (4 + 1 / 128), 12);
  });

  it('warns over half a percent, and refuses over one and a half', async () => {
    const warned = await bench.run('calibrate', 'a.json', '--long', '258 mm');
    expect(warned).toMatchObject({ code: 0, err: expect.stringContaining('caution: ') });
    const before = bench.read('a.json');
    // Letter fitted on A4 comes out at 94 %: 244.6 mm.
    const refused = await bench.run('calibrate', 'a.json', '--long', '244.6 mm');
    expect(refused).toMatchObject({ code: 2, err: expect.stringMatching(/^a\.json: .*fitting the page/) });
    expect(bench.read('a.json')).toBe(before);
  });

  it('keeps the correction with a printer of the workshop, adding one that is new', async () => {
    writeFileSync(bench.path('shop.json'), JSON.stringify(WORKSHOP));
    expect((await bench.run('calibrate', 'shop.json', '--long', '260')).err).toContain('--printer');
    expect((await bench.run('calibrate', 'shop.json', '--printer', 'plotter', '--short', '170.3')).code).toBe(
      0,
    );
    const { printers } = bench.json('shop.json');
    expect(printers.map(({ name }: { name: string }) => name)).toEqual(['studio laser', 'plotter']);
    expect(printers[1].calibration.short).toBeCloseTo(170 / 170.3, 12);
  });

  it('refuses the same reading twice on one day: its correction is in force already', async () => {
    await bench.run('calibrate', 'a.json', '--long', '259.2', '--short', '170.3');
    const before = bench.read('a.json');
    const again = await bench.run('calibrate', 'a.json', '--long', '259.2 mm');
    expect(again).toMatchObject({ code: 2, err: expect.stringContaining('was given today already') });
    expect(bench.read('a.json')).toBe(before);
    // Another reading is of a new sheet, and a bar that reads true may read so as often as one looks.
    expect((await bench.run('calibrate', 'a.json', '--long', '260')).code).toBe(0);
    expect((await bench.run('calibrate', 'a.json', '--long', '260')).code).toBe(0);
    expect((await bench.run('calibrate', 'a.json', '--short', '170.3')).code).toBe(2);
  });

  it.each([
    ['mm', ['--long', '10.05'], /taken as mm: did you mean in\? Type "10\.05 in"/],
    ['in', ['--long', '259.2'], /taken as in: did you mean mm\? Type "259\.2 mm"/],
    ['mm', ['--long', '10 1/4 in'], /what the bar of 260 mm along the long edge reads in inches/],
    ['mm', ['--long', '170.3', '--short', '259.2'], /the short edge reads: are the two readings exchanged\?/],
    ['mm', ['--short', '10 in'], /the long edge reads: are the two readings exchanged\?/],
    ['mm', ['--long', '244.6'], /fitting the page/],
  ])('names the slip behind a reading in a design in %s: %j', async (units, args, words) => {
    await bench.run('start', 'splayed-leg', '-o', 'b.json', '--units', units, '--paper', 'A4');
    const { code, err } = await bench.run('calibrate', 'b.json', ...args);
    expect(code).toBe(2);
    expect(err).toMatch(words);
  });

  it('says what is missing when neither a sheet nor a reading is asked for', async () => {
    expect(await bench.run('calibrate', 'a.json')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^Expected -o/),
    });
  });
});

describe('offset', () => {
  const square =
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100" fill="none"><path d="M10 10H90V90H10Z"/><circle cx="50" cy="50" r="10"/></svg>';

  it('grows a drawing and keeps arcs: the area follows Steiner’s formula', async () => {
    writeFileSync(bench.path('a.svg'), square);
    const { code, out } = await bench.run('offset', 'a.svg', '--by', '5', '-o', 'b.json');
    expect(code).toBe(0);
    const [region] = bench.json('b.json').regions;
    expect(region.outer.map(({ kind }: { kind: string }) => kind).sort()).toEqual([
      ...Array(4).fill('arc'),
      ...Array(4).fill('line'),
    ]);
    expect(region.holes[0].every((edge: { radius: number }) => Math.abs(edge.radius - 5) < 1e-6)).toBe(true);
    // Steiner: area + perimeter · r + π r²; the hole shrinks to radius 5.
    const grown = 6400 + 320 * 5 + Math.PI * 25 - Math.PI * 25;
    expect(out).toContain(`→ ${(grown / 100).toFixed(2)} cm²`);
  });

  it('shrinks, mitres, prints SVG or JSON, and reads its own output again', async () => {
    writeFileSync(bench.path('a.svg'), square);
    const svg = await bench.run('offset', 'a.svg', '--by=-1/8 in', '--corners', 'mitred');
    expect(svg.code).toBe(0);
    writeFileSync(bench.path('b.svg'), svg.out);
    expect(
      (await bench.run('offset', 'b.svg', '--by', '1/8 in', '--corners', 'mitred', '-o', 'c.json')).code,
    ).toBe(0);
    const xs = bench.json('c.json').regions[0].outer.map((edge: { from: number[] }) => edge.from[0]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(80, 4);
    const json = await bench.run('offset', 'c.json', '--by', '1', '--json');
    expect(JSON.parse(json.out)['legwright-outline']).toBe(1);
  });

  const drawing = (body: string, attributes = ''): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100" ${attributes}>${body}</svg>`;
  const overlapping = 'M0 0H20V20H0Z M10 10H30V30H10Z';

  // Squares of 20 mm that share 10 × 10 mm. SVG 2, section 13.4.2: nonzero is the initial value of fill-rule.
  it.each([
    ['two loops of one path unite', drawing(`<path d="${overlapping}"/>`), 700],
    ['by evenodd what they share is out', drawing(`<path fill-rule="evenodd" d="${overlapping}"/>`), 600],
    ['by the style of a group', drawing(`<g style="fill-rule: evenodd"><path d="${overlapping}"/></g>`), 600],
    [
      'two shapes unite, whatever the rule',
      drawing(
        '<rect width="20" height="20"/><rect x="10" y="10" width="20" height="20"/>',
        'fill-rule="evenodd"',
      ),
      700,
    ],
    [
      'lines that cross unite too',
      drawing('<rect width="20" height="20"/><rect x="10" y="10" width="20" height="20"/>', 'fill="none"'),
      700,
    ],
    ['drawn twice is drawn once', drawing('<rect width="20" height="20"/>'.repeat(2), 'fill="none"'), 400],
    [
      'a line inside a shape is a hole',
      drawing('<rect width="20" height="20"/><rect x="5" y="5" width="10" height="10" fill="none"/>'),
      300,
    ],
    ['loops that run opposite ways leave a hole', drawing('<path d="M0 0H20V20H0Z M5 5V15H15V5Z"/>'), 300],
  ])('fills an SVG as it says: %s', async (_, text, area) => {
    writeFileSync(bench.path('a.svg'), text);
    const { code, out, err } = await bench.run('offset', 'a.svg', '--by', '0', '-o', 'b.json');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(`→ ${(area / 100).toFixed(2)} cm²`);
  });

  it('says when a filled shape is covered by another', async () => {
    writeFileSync(
      bench.path('a.svg'),
      drawing('<rect width="20" height="20"/><rect x="5" y="5" width="10" height="10"/>'),
    );
    const { code, err } = await bench.run('offset', 'a.svg', '--by', '0', '-o', 'b.json');
    expect(code).toBe(0);
    expect(err).toMatch(/^a\.svg: 1 filled outline inside another filled one is covered by it/);
    expect(bench.json('b.json').regions[0].holes).toEqual([]);
  });

  it('never replaces the drawing it reads, unless told to', async () => {
    writeFileSync(bench.path('a.svg'), square);
    symlinkSync(bench.path('a.svg'), bench.path('link.svg'));
    for (const output of ['a.svg', './a.svg', 'link.svg']) {
      const { code, err } = await bench.run('offset', 'a.svg', '--by', '1', '-o', output);
      expect([code, err]).toEqual([2, expect.stringContaining('--force')]);
      expect(bench.read('a.svg')).toBe(square);
    }
    expect((await bench.run('offset', 'a.svg', '--by', '1', '-o', 'a.svg', '--force')).code).toBe(0);
    expect(bench.read('a.svg')).not.toBe(square);
  });

  it('passes over a stray open line beside closed outlines, and says so', async () => {
    const stray = square.replace('<path', '<path d="M1 2L3 4"/><path');
    writeFileSync(bench.path('a.svg'), stray);
    const { code, err } = await bench.run('offset', 'a.svg', '--by', '1', '-o', 'b.json');
    expect(code).toBe(0);
    expect(err).toBe('a.svg: Passed over an open line from x 1.00, y 2.00 mm: its ends are 2.83 mm apart.\n');
    expect(bench.json('b.json').regions).toHaveLength(1);
  });

  it.each([
    ['a.svg', square, '-60', /^a\.svg: Nothing is left of the outlines 60 mm inwards/],
    [
      'a.svg',
      square.replace('Z"', '"').replace(/<circle.*?>/, ''),
      '1',
      /^a\.svg: Found an open line from x 10\.00, y 10\.00 mm/,
    ],
    ['a.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>', '1', /^a\.svg: The drawing has no closed outline/],
    ['a.svg', square, 'wide', /^--by: .*"wide".* a length/],
    ['a.dxf', square, '1', /^a\.dxf: Expected a file ending in \.svg or \.json/],
    ['a.json', '{"legwright-outline": 1, "regions": [{"outer": [], "holes": []}]}', '1', /^a\.json:1:48: /],
    [
      'a.json',
      '{"legwright-outline": 1, "regions": [{"outer": [\n{"kind": "line", "id": "a", "role": "sawn", "from": [0, 0], "to": [9, 0]}], "holes": []}]}',
      '1',
      /^a\.json:2:1: The outlines cannot be used: /,
    ],
  ])('refuses %s with its reason (%#)', async (file, content, by, words) => {
    writeFileSync(bench.path(file), content);
    const { code, err } = await bench.run('offset', file, '--by', by);
    expect(code).toBe(2);
    expect(err).toMatch(words);
  });
});

describe('the examples under the help', () => {
  const wordsOf = (line: string): string[] =>
    [...line.matchAll(/(?:"[^"]*"|[^\s"])+/g)].map(([word]) => word.replaceAll('"', ''));

  it('all run, in the order of the work', async () => {
    const square =
      '<svg xmlns="http://www.w3.org/2000/svg" width="50mm" height="50mm" viewBox="0 0 50 50"><rect width="50" height="50"/></svg>';
    writeFileSync(bench.path('tracing.svg'), square);
    let count = 0;
    for (const command of COMMANDS) {
      const help = (await bench.run(command, '--help')).out;
      for (const line of help.slice(help.search(/^Examples?:$/m)).match(/^ {2}legwright .*$/gm) ?? []) {
        const outcome = await bench.run(...wordsOf(line).slice(1));
        expect([line, outcome.code, outcome.err.replace(/^caution: .*\n/gm, '')]).toEqual([line, 0, '']);
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(COMMANDS.length);
  });
});

describe('the command line', () => {
  it.each(COMMANDS)('explains %s with an example that begins with its name', async (command) => {
    const { code, out } = await bench.run(command, '--help');
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`Examples?:\\n  legwright ${command}\\b`));
  });

  it.each([
    [['bogus']],
    [['make']],
    [['make', 'a.json']],
    [['forms', '--colour']],
    [['make', 'a.json', '-o', 'x', '--view', 'top']],
  ])('refuses %j with 2 and a reason', async (args) => {
    const { code, out, err } = await bench.run(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^error: /);
  });

  it('says which exit codes there are, and its version', async () => {
    expect((await bench.run('--help')).out).toMatch(/0 +done\n +1 .*\n +2 .*\n +3 .*\n +4 /);
    expect((await bench.run('--version')).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
