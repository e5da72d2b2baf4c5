import type { Projection } from './api.ts';

/** The transform that does `first` and then `second`. */
export function projectTwice(first: Projection, second: Projection): Projection {
  const [a, b, c, d, e, f, g, h, i] = first;
  const [j, k, l, m, n, o, p, q, r] = second;
  return levelled([
    j * a + k * d + l * g,
    j * b + k * e + l * h,
    j * c + k * f + l * i,
    m * a + n * d + o * g,
    m * b + n * e + o * h,
    m * c + n * f + o * i,
    p * a + q * d + r * g,
    p * b + q * e + r * h,
    p * c + q * f + r * i,
  ]);
}

/** The way back. Throws a RangeError when there is none, which points that were found sound never give. */
export function invertProjection([a, b, c, d, e, f, g, h, i]: Projection): Projection {
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  if (determinant === 0 || !Number.isFinite(determinant))
    throw new RangeError('no way back: flat projection');
  // Divided by the determinant itself, not by its size alone: w stays positive on what the first way sees.
  const s = 1 / determinant;
  return levelled([
    s * (e * i - f * h),
    s * (c * h - b * i),
    s * (b * f - c * e),
    s * (f * g - d * i),
    s * (a * i - c * g),
    s * (c * d - a * f),
    s * (d * h - e * g),
    s * (b * g - a * h),
    s * (a * e - b * d),
  ]);
}

/** The same transform with its largest entry at 1 or −1. */
export function levelled(entries: Projection): Projection {
  const most = entries.reduce((largest, entry) => Math.max(largest, Math.abs(entry)), 0);
  const [a, b, c, d, e, f, g, h, i] = entries;
  return [a / most, b / most, c / most, d / most, e / most, f / most, g / most, h / most, i / most];
}
