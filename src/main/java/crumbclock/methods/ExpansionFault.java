package crumbclock.methods;

/**
 * Something in a request or a method that cannot be turned into steps.
 *
 * @param orderId order concerned; empty for a batch, and for what concerns several orders
 * @param itemId  cake or batch concerned; empty for the whole order, or for what concerns several
 * @param message one sentence with what was read and what is expected
 */
public record ExpansionFault(String orderId, String itemId, String message) {

    @Override
    public String toString() {
        if (orderId.isEmpty()) {
            return itemId.isEmpty() ? message : "batch " + itemId + ": " + message;
        }
        return "order " + orderId + (itemId.isEmpty() ? "" : ", cake " + itemId) + ": " + message;
    }
}
