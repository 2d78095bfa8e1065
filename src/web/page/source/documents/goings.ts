// Where she went last is where she is: what is still being read on the way to another place stays closed when it comes.
let goings = 0;

/** She sets out for a place; whether she is on her way there still. */
export function sets_out(): () => boolean {
  const this_one = ++goings;
  return () => this_one === goings;
}
