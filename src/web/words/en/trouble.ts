/** What may go wrong with the page itself. */
export const trouble = {
  full: 'This browser has no room left: your last change is not kept yet. Deleted designs give theirs back once they are let go for good, under Designs.',
  broken: 'This browser does not keep your last change. It stays in this page until it is closed.',
  again: 'Try again',
  save: 'Save the design as a file',
  none: 'This browser keeps nothing for this page: save your design as a file before you close it.',
  fault: 'A fault of this page, not of your design. Please report it with these words:',
  update: 'A newer version of this page is here.',
  reload: 'Use it now',
} as const;
