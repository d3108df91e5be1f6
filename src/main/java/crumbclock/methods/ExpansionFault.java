package crumbclock.methods;

/**
 * Something in a request or a method that cannot be turned into steps.
 *
 * @param orderId order concerned; empty for a batch
 * @param itemId  cake or batch concerned; empty for the whole order
 * @param message one sentence with what was read and what is expected
 */
public record ExpansionFault(String orderId, String itemId, String message) {

    @Override
    public String toString() {
        return (orderId.isEmpty() ? "batch " : "order " + orderId + (itemId.isEmpty() ? "" : ", cake ")) + itemId + ": "
                + message;
    }
}
