/** How a length is written: millimetres with so many decimals, inches to a fraction, or feet and inches. */
export type LengthStyle =
  | { readonly unit: 'mm'; readonly decimals: number }
  | { readonly unit: 'in'; readonly denominator: 16 | 32 | 64 }
  | { readonly unit: 'ft-in'; readonly denominator: 16 | 32 | 64 };

/** How an angle is written: degrees with so many decimals, or degrees and whole minutes. */
export type AngleStyle = { readonly unit: 'deg'; readonly decimals: number } | { readonly unit: 'deg-min' };

/** What a bare number means where a maker types a length. */
export type LengthUnit = 'mm' | 'in';
