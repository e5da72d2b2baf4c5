const files = import.meta.glob<string>('../../../templates/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The text of each form that comes with the program, by its name. */
export const FORM_TEXTS: ReadonlyMap<string, string> = new Map(
  Object.entries(files).map(([path, text]) => [path.replace(/^.*\/|\.yaml$/g, ''), text]),
);
