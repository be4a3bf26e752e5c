// The sugarhouse: the settings of the folder.
function readHouse() {
  const reply = call("house");
  house = { values: reply.values || {}, errors: reply.errors || {}, tanks: reply.tanks || [], title: reply.title || "" };
  return reply;
}
