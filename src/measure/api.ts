/** How a length is written: millimetres with so many decimals, or inches to a fraction. */
export type LengthStyle =
  | { readonly unit: 'mm'; readonly decimals: number }
  | { readonly unit: 'in'; readonly denominator: 16 | 32 | 64 };

/** What a bare number means where a maker types a length. */
export type LengthUnit = 'mm' | 'in';
