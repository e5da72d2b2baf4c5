/** Links and square codes. */
export const link = {
  title: 'As a link',
  help: 'A link holds a design whole but for photographs, and sends nothing anywhere. The square code on each pattern is the same link.',
  make: (name: string) => `Link to ${name}`,
  here: 'The link',
  copy: 'Copy it',
  copied: 'Copied',
  from: 'From a link, or the text of square codes',
  open: 'Open it',
} as const;
