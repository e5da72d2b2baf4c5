/** What `listedForms` gave when the app was built. */
declare module 'virtual:listed-forms' {
  export const LISTED_FORMS: readonly import('./listed-forms.ts').ListedForm[];
}
