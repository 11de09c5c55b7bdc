/**
 * What `make` makes, made when it is first asked for and kept. So a draft costs nothing for what nobody reads of it; to
 * whoever reads it through a getter it is a field like the others.
 */
export function whenAsked<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
