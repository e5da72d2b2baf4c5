/**
 * Growth of offsets and the peer's time beside it, 1,000 to 100,000 edges, each family, size and library in a process of its own:
 * `LEGWRIGHT_BENCH=large npm run bench -- kernel`. The peer is stopped after LEGWRIGHT_BENCH_LIMIT seconds of processor time (120) a size, which makes
 * the ratio a lower bound ("> 40 ×"); what it could not do in the time at one size is not tried at a larger one, and the same bound stands.
 * With the limit as it is the run takes half an hour. Times are milliseconds of processor time, the best of each process.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { GROWING } from '../cases/outlines/adversarial.ts';
import { codeOf } from '../support/bundle-of.ts';

const ON_ONE_CIRCLE = ['gear', 'noise', 'near-tangent arcs', 'near-tangent rounds', 'star', 'random ring'];
const ALIKE = ['comb', 'spiral', 'nested holes', ...Object.keys(GROWING)];
const SIZES = [1_000, 10_000, 100_000];
const LIMIT = Number(process.env.LEGWRIGHT_BENCH_LIMIT ?? 120);
/** What a process needs to draw its outline and to make chords of it, s, at the very most. */
const SPARE = 10;

interface Times {
  readonly best: number;
  readonly edges: number;
  readonly result?: number;
}

/** The bundle lies where packages are found that it asks for by name. */
async function writtenBundle(): Promise<string> {
  const folder = fileURLToPath(new URL('../../node_modules/.cache/legwright/', import.meta.url));
  mkdirSync(folder, { recursive: true });
  const path = `${folder}time-offset.mjs`;
  writeFileSync(path, await codeOf(new URL('./time-offset.ts', import.meta.url)));
  return path;
}

/** What a process finds, or undefined when it is stopped after `limit` seconds. */
function timesIn(
  bundle: string,
  who: string,
  family: string,
  size: number,
  limit: number,
): Promise<Times | undefined> {
  const code = `import(${JSON.stringify(`file://${bundle}`)}).then(async ({ timeOffset }) =>
    process.stdout.write(JSON.stringify(await timeOffset(${JSON.stringify(who)}, ${JSON.stringify(family)}, ${size}, 1500))))`;
  return new Promise((resolve, reject) => {
    // The shell's own limit counts processor time, however busy the machine is.
    const seconds = limit + SPARE;
    const child = spawn('sh', ['-c', `ulimit -t ${seconds}; exec "$0" -e "$1"`, process.execPath, code], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let said = '';
    child.stdout.on('data', (part) => {
      said += part;
    });
    child.on('close', (exit, signal) => {
      if (exit === 0) resolve(JSON.parse(said));
      else if (signal === 'SIGXCPU' || signal === 'SIGKILL') resolve(undefined);
      else reject(new Error(`${who}, ${family} of ${size}: process ended with ${exit ?? signal}`));
    });
  });
}

async function rowOf(bundle: string, family: string): Promise<string> {
  const ours: Times[] = [];
  const ratios: string[] = [];
  let stopped = false;
  for (const size of SIZES) {
    const found = await timesIn(bundle, 'legwright', family, size, 10 * LIMIT);
    if (found === undefined) throw new Error(`${family} of ${size}: the kernel does not come to an end`);
    ours.push(found);
    const peer: Times | undefined = stopped
      ? undefined
      : await timesIn(bundle, 'clipper2-wasm', family, size, LIMIT);
    stopped = peer === undefined;
    const ratio = (peer?.best ?? 1000 * LIMIT) / found.best;
    ratios.push(
      `${stopped ? '> ' : ''}${ratio < 20 ? ratio.toFixed(1) : Math.round(ratio).toLocaleString('en')} ×`,
    );
  }
  const growth = Math.log(ours.at(-1)!.best / ours[0]!.best) / Math.log(ours.at(-1)!.edges / ours[0]!.edges);
  const times = ours.map(({ best }) => (best < 20 ? best.toFixed(1) : Math.round(best).toString()));
  return `| ${[family, ...times, growth.toFixed(2), ...ratios].join(' | ')} |`;
}

/** Prints the table row by row; LEGWRIGHT_BENCH_FAMILY picks some, with a semicolon between. */
export async function printLargeOutlines(): Promise<void> {
  const bundle = await writtenBundle();
  const only = process.env.LEGWRIGHT_BENCH_FAMILY?.split(';');
  const sizes = SIZES.map((size) => size.toLocaleString('en'));
  const heads = [
    '2 mm in, ms of legwright',
    ...sizes,
    'exponent',
    ...sizes.map((size) => `clipper2-wasm, ${size}`),
  ];
  process.stdout.write(`\n| ${heads.join(' | ')} |\n|${' --- |'.repeat(heads.length)}\n`);
  for (const family of [...ON_ONE_CIRCLE, ...ALIKE]) {
    if (only === undefined || only.includes(family)) process.stdout.write(`${await rowOf(bundle, family)}\n`);
  }
}
