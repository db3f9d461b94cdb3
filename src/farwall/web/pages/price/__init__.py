"""The pages of money: price, hours, masking, quantities, what to buy."""
