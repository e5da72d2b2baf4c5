/** Links and square codes. */
export const link = {
  title: 'As a link',
  refused: 'The link was not opened',
  refusedHelp: 'Nothing was changed. Ask for the link once more, or for the design as a file.',
  help: 'A link holds a design whole but for photographs, and sends nothing anywhere. The square code on each pattern holds the same text: it is for this page or any reader of such codes, whose text is pasted below. A telephone’s camera may not open it by itself.',
  make: (name: string) => `Link to ${name}`,
  here: 'The link',
  copy: 'Copy it',
  copied: 'Copied',
  from: 'From a link, or the text of square codes',
  open: 'Open it',
} as const;
