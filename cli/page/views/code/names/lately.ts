/** So many texts are known at once: the files of a draft, and some of what was typed meanwhile. */
const most = 300;

/** What is made of a text, known again for those that were asked for lately. */
export function lately<Value>(make: (text: string) => Value): (text: string) => Value {
  const made = new Map<string, Value>();
  return (text) => {
    const known = made.get(text);
    if (known !== undefined) return known;
    if (made.size >= most) made.clear();
    const value = make(text);
    made.set(text, value);
    return value;
  };
}
