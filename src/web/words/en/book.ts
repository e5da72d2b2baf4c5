/** The screen of the shop book. */
export const book = {
  contents: 'Contents',
  print: 'Make the shop book',
  settingOut: 'Set out a view at full size',
  views: { front: 'Front', left: 'From the left', right: 'From the right', plan: 'Plan' },
  partsAlone:
    'A shop book is of a whole base. This form draws single parts: their patterns are on the sheets.',
  figure: 'Drawing',
  enlarge: 'Show it in the whole window',
  enlargeWhat: (name: string) => `${name}: show it in the whole window`,
  close: 'Close',
} as const;
