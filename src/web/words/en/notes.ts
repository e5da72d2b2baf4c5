/** What is said about findings. */
export const notes = {
  title: 'Findings',
  none: 'The checks have nothing to say.',
  severity: { stop: 'Stop', caution: 'Caution', note: 'Note' },
  show: 'Show where',
  awaited: 'As it was before the last change: it is reckoned anew.',
  toFigure: 'To the figure',
  open: 'Read',
  close: 'Close',
  set: (figure: string) => `Set ${figure}`,
  count: {
    stop: (n: number) => (n === 1 ? '1 stop' : `${n} stops`),
    caution: (n: number) => (n === 1 ? '1 caution' : `${n} cautions`),
    note: (n: number) => (n === 1 ? '1 note' : `${n} notes`),
  },
  unusable: 'These figures cannot be used',
  unusableHelp: 'The drawing shows the last figures that could.',
} as const;
