package rigmorrow.model.shot;

import rigmorrow.model.floor.Floor;

/**
 * One shot list with the floor as it was: the unit of planning, history and benchmarks.
 *
 * @param floor everything that stays
 * @param shotList what must be photographed
 */
public record Batch(Floor floor, ShotList shotList) {}
