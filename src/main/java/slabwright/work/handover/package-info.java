/**
 * What is handed over: cost with every line traceable, scope with declined advice, placement
 * approval, reopening and care, the load list, the walkthrough's questions. All values, from a work
 * plan.
 *
 * <p>{@link Handovers} (entry) gives each {@link HandoverDocument}: {@link PlacementApproval},
 * {@link Reopening} with {@link CareList} and {@link OpeningHours}, {@link LoadList} with {@link
 * SolventGear}, {@link Walkthrough}. {@link OwnerTimes} is what the owner sees to and when. {@link
 * OrderLine} is what is ordered by when; {@link Scope} (entry) is what was agreed; {@link Cost}
 * with {@link CostLine}, made by {@link CostLineBuilder} from {@link BuyList} and its {@link
 * BuyLine}s, {@link ConsumableFinder} with {@link Consumable}, {@link ToolNeeds} and {@link
 * WorkingDays}.
 */
package slabwright.work.handover;
