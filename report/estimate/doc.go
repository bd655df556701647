package estimate
