/* Names places on a roof plan, as the service does, without asking it: plan is the answer of /api/units/{number}/roof-plan. */
/** Returns the name of the place at shares of the length (x) and width (y), such as "front-left, front vent". */
export function zoneAt(plan, x, y) {
  const inside = (share, from, to) => share >= from && (share < to || to === 1);
  const field = plan.zones.find((zone) => inside(x, zone.xFrom, zone.xTo) && inside(y, zone.yFrom, zone.yTo));
  const beyond = (fromCentre, size) => Math.max(0, Math.abs(fromCentre) - size / 2);
  const near = plan.objects
    .map((object) => ({
      name: object.name,
      away: Math.hypot(beyond((x - object.x) * plan.lengthMetres, object.lengthMetres), beyond((y - object.y) * plan.widthMetres, object.widthMetres)),
      area: object.lengthMetres * object.widthMetres,
    }))
    .filter((object) => object.away <= plan.nearMetres)
    .sort((one, other) => one.away - other.away || one.area - other.area)[0];
  return near ? field.name + ', ' + near.name : field.name;
}
