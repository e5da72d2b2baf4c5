/** The study of proportions. */
export const study = {
  help: 'The same design across the range of one or two figures. Click one to take it. What is counted below are stops and cautions of parts and joints; notes, comfort, weight and standing are reckoned once a design is taken, so that its findings may be more.',
  across: 'Across',
  down: 'Down',
  none: 'nothing',
  figure: 'Figure',
  from: 'From',
  to: 'To',
  steps: 'How many',
  seen: 'Seen',
  sides: { room: 'standing in the room', front: 'from the front', left: 'from the left', plan: 'from above' },
  sound: 'sound',
  value: (label: string, figure: string) => `${label} ${figure}`,
  take: (name: string, told: string) => `Take ${name}: ${told}`,
  taken: (figures: string) => `${figures} taken from the study`,
} as const;
