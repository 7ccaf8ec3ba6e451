# syntax=docker/dockerfile:1
# Two stages: the SDK builds, the runtime serves. The steps between the markers are also run by tests/container-steps, since they must work
# without a container engine too.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY . .
# steps: build
RUN dotnet restore src/SoilAdvisor.Api/SoilAdvisor.Api.csproj --locked-mode
RUN dotnet publish src/SoilAdvisor.Api/SoilAdvisor.Api.csproj -c Release --no-restore -o /app
RUN cp -r reference-tables /app/reference-tables
# steps: end

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app .
# The image's own unprivileged user.
USER $APP_UID
ENV ASPNETCORE_HTTP_PORTS=8080
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=3s --start-period=5s CMD ["dotnet", "SoilAdvisor.Api.dll", "--health", "http://127.0.0.1:8080/health"]
ENTRYPOINT ["dotnet", "SoilAdvisor.Api.dll"]
