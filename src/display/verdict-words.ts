/** Each verdict by a sign and a word, never by colour alone. */
export const verdictWords = {
  yes: '✔ yes',
  no: '✘ no',
  'cannot tell': '? cannot tell',
} as const;
