/**
 * What `make` makes, made when it is first asked for and kept: a draft costs nothing for what nobody reads of it.
 */
export function whenAsked<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** How the fields of an object are made that are made when asked for. */
type Makers<Fields> = { readonly [Name in keyof Fields]: () => Fields[Name] };

const makersOf = new WeakMap<object, Readonly<Record<string, () => unknown>>>();

/** For each name the one getter of all objects: V8 looks every field up in an object whose getters are its own (Node 20). */
const getters = new Map<string, PropertyDescriptor>();

/**
 * The same object with more fields, each made when somebody first asks for it. To whoever reads, copies or compares it they
 * are fields like the others.
 */
export function withWhenAsked<Given extends object, Fields extends object>(
  given: Given,
  makers: Makers<Fields>,
): Given & Fields {
  const whole = { ...given };
  const kept: Record<string, () => unknown> = {};
  for (const name in makers) {
    kept[name] = whenAsked(makers[name]);
    Object.defineProperty(whole, name, getterOf(name));
  }
  makersOf.set(whole, kept);
  return whole as Given & Fields;
}

function getterOf(name: string): PropertyDescriptor {
  const known = getters.get(name);
  if (known) return known;
  const getter: PropertyDescriptor = {
    get(this: object) {
      return makersOf.get(this)?.[name]?.();
    },
    enumerable: true,
  };
  getters.set(name, getter);
  return getter;
}
