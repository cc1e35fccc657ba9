package rigmorrow.model.plan;

/**
 * A piece of kit that a job uses from the start of its changeover to the end of its unloading.
 *
 * @param kit id of the kit
 * @param unit id of the piece
 * @param from where it is fetched: a rig's id or a shelf; the job's own rig when it is there
 *     already
 */
public record KitUse(String kit, String unit, String from) {}
