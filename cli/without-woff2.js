/** The fonts are TrueType: what unpacks another kind of font is a third of all the code, and is left out. */
export const withoutWoff2 = {
  name: 'without WOFF2',
  setup: ({ onLoad }) =>
    onLoad({ filter: /brotli[\\/]decompress\.js$/ }, () => ({
      contents: 'module.exports = () => { throw new Error("WOFF2 fonts are not read."); };',
    })),
};
