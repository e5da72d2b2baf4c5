import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Vec } from '../../../src/geometry/index.ts';

/** What an independent reader finds on a page: places in points from the lower left corner, y up. */
export interface PrintedPage {
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly texts: readonly {
    readonly text: string;
    readonly at: Vec;
    readonly angle: number;
    readonly size: number;
    readonly width: number;
  }[];
  readonly paths: readonly PrintedPath[];
}

export interface PrintedPath {
  readonly paint: 'stroke' | 'fill';
  /** Points. */
  readonly width: number;
  readonly dash: readonly number[];
  readonly colour: string;
  /** Each subpath as points along it, curves finely divided. */
  readonly lines: readonly (readonly Vec[])[];
  /** Shown only inside a clip. */
  readonly isClipped: boolean;
}

type Matrix = readonly [number, number, number, number, number, number];

/** A cubic of 7.5° at a radius of 3 m divided so often strays less than 0.003 mm. */
const CURVE_PARTS = 48;

export async function openPdf(bytes: Uint8Array) {
  return getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
}

export async function readPages(bytes: Uint8Array): Promise<PrintedPage[]> {
  const file = await openPdf(bytes);
  const labels = (await file.getPageLabels()) ?? [];
  const pages: PrintedPage[] = [];
  for (let i = 1; i <= file.numPages; i++) {
    const page = await file.getPage(i);
    const [x0, y0, x1, y1] = page.view as [number, number, number, number];
    const content = await page.getTextContent();
    const list = await page.getOperatorList();
    pages.push({
      label: labels[i - 1] ?? '',
      width: x1 - x0,
      height: y1 - y0,
      texts: content.items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [a, b, , , x, y] = item.transform as unknown as Matrix;
        return [
          {
            text: item.str,
            at: { x, y },
            angle: Math.atan2(b, a),
            size: Math.hypot(a, b),
            width: item.width,
          },
        ];
      }),
      paths: pathsOf(list.fnArray, list.argsArray),
    });
  }
  await file.destroy();
  return pages;
}

interface Pen {
  matrix: Matrix;
  width: number;
  dash: readonly number[];
  stroke: string;
  fill: string;
  isClipped: boolean;
}

function pathsOf(operators: readonly number[], operands: readonly unknown[]): PrintedPath[] {
  const paths: PrintedPath[] = [];
  const saved: Pen[] = [];
  let pen: Pen = { matrix: [1, 0, 0, 1, 0, 0], width: 1, dash: [], stroke: '', fill: '', isClipped: false };
  let clips = false;
  operators.forEach((operator, i) => {
    const args = operands[i] as readonly unknown[];
    switch (operator) {
      case OPS.save:
        saved.push({ ...pen });
        break;
      case OPS.restore:
        pen = saved.pop()!;
        break;
      case OPS.transform:
        pen.matrix = times(pen.matrix, args as unknown as Matrix);
        break;
      case OPS.setLineWidth:
        pen.width = args[0] as number;
        break;
      case OPS.setDash:
        pen.dash = args[0] as number[];
        break;
      case OPS.setStrokeRGBColor:
        pen.stroke = args[0] as string;
        break;
      case OPS.setFillRGBColor:
        pen.fill = args[0] as string;
        break;
      case OPS.clip:
      case OPS.eoClip:
        clips = true;
        break;
      case OPS.constructPath: {
        const [paint, data] = args as [number, [ArrayLike<number> | null]];
        const isStroke = paint === OPS.stroke || paint === OPS.closeStroke;
        const isFill = paint === OPS.fill || paint === OPS.eoFill;
        if ((isStroke || isFill) && data[0] !== null) {
          paths.push({
            paint: isStroke ? 'stroke' : 'fill',
            width: pen.width,
            dash: pen.dash,
            colour: isStroke ? pen.stroke : pen.fill,
            lines: linesOf(data[0], pen.matrix),
            isClipped: pen.isClipped,
          });
        }
        if (clips) pen.isClipped = true;
        clips = false;
        break;
      }
    }
  });
  return paths;
}

function linesOf(data: ArrayLike<number>, matrix: Matrix): Vec[][] {
  const lines: Vec[][] = [];
  const point = (at: number): Vec => moved({ x: data[at]!, y: data[at + 1]! }, matrix);
  for (let i = 0; i < data.length; ) {
    const line = lines.at(-1);
    switch (data[i]) {
      case 0:
        lines.push([point(i + 1)]);
        i += 3;
        break;
      case 1:
        line!.push(point(i + 1));
        i += 3;
        break;
      case 2: {
        const p = [line!.at(-1)!, point(i + 1), point(i + 3), point(i + 5)] as const;
        for (let k = 1; k <= CURVE_PARTS; k++) line!.push(onCubic(p, k / CURVE_PARTS));
        i += 7;
        break;
      }
      case 4:
        line!.push(line![0]!);
        i += 1;
        break;
      default:
        throw new Error(`step ${data[i]} of a path is not known`);
    }
  }
  return lines;
}

function onCubic([a, b, c, d]: readonly [Vec, Vec, Vec, Vec], t: number): Vec {
  const s = 1 - t;
  const mix = (p: number, q: number, r: number, u: number): number =>
    s * s * s * p + 3 * s * s * t * q + 3 * s * t * t * r + t * t * t * u;
  return { x: mix(a.x, b.x, c.x, d.x), y: mix(a.y, b.y, c.y, d.y) };
}

function moved({ x, y }: Vec, [a, b, c, d, e, f]: Matrix): Vec {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

function times([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix {
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}
