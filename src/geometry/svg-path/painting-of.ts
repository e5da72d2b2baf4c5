import type { XmlElement } from './xml-elements.ts';

/** What a drawing says of the inside of an element. */
export interface Painting {
  /** `evenodd` only where the drawing says so, on the element or on a group round it. */
  readonly rule: 'nonzero' | 'evenodd';
  /** False where the drawing says `fill: none`: lines, not areas. */
  readonly isFilled: boolean;
}

/** Painting of an element in a group: its own attribute or, before that, its `style` (CSS cascade, SVG 2 chapter 6), else the group's. */
export function paintingOf(element: XmlElement, inherited: Painting): Painting {
  const rule = stated(element, 'fill-rule');
  const fill = stated(element, 'fill');
  return {
    rule: rule === undefined ? inherited.rule : rule === 'evenodd' ? 'evenodd' : 'nonzero',
    isFilled: fill === undefined ? inherited.isFilled : fill !== 'none',
  };
}

function stated({ attributes }: XmlElement, name: 'fill' | 'fill-rule'): string | undefined {
  const property = new RegExp(`(?:^|;)\\s*${name}\\s*:\\s*([^;]*?)\\s*(?:;|$)`);
  const value = property.exec(attributes.get('style') ?? '')?.[1] ?? attributes.get(name)?.trim();
  return value === 'inherit' ? undefined : value;
}
